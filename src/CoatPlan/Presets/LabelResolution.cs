using CoatPlan.Jobs;
using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>Resolves one product: what the job says, then what its class says, then what the contract says; and who said it.</summary>
internal sealed class LabelResolution
{
    private static readonly Duration NoTime = Duration.Zero;

    private readonly JobProduct product;
    private readonly ProductLabel said;
    private readonly ProductClass? preset;
    private readonly Catalogue catalogue;
    private readonly ProblemList problems;
    private readonly ImmutableSortedDictionary<string, Origin>.Builder origins =
        ImmutableSortedDictionary.CreateBuilder<string, Origin>(StringComparer.Ordinal);

    private LabelResolution(JobProduct product, ProductClass? preset, Catalogue catalogue, ProblemList problems)
    {
        this.product = product;
        this.preset = preset;
        this.catalogue = catalogue;
        this.problems = problems;
        said = product.Label;
    }

    private string Where => $"product `{product.Key}`";

    /// <summary>The label of a product; what cannot be settled is among the problems.</summary>
    public static Label Of(JobProduct product, Catalogue catalogue, ProblemList problems)
    {
        var preset = product.Preset is null ? null : catalogue.Products.FirstOrDefault(row => row.Word == product.Preset);
        bool isUnknown = product.Preset is not null && preset is null;
        if (isUnknown)
        {
            string[] known = [.. catalogue.Products.Select(row => row.Word)];
            problems.Add(product.Mark, Sentences.UnknownWord($"preset of product `{product.Key}`", product.Preset!, known, null));
        }

        // Fields that an unknown class would have filled are not asked for as well.
        return new LabelResolution(product, preset, catalogue, isUnknown ? new(null) : problems).Resolve();
    }

    private Label Resolve()
    {
        AskForFields();
        var method = Method();
        var density = Chosen("density", said.Density, preset?.Density);
        var (mass, volume) = Net(density);
        var times = Times();
        var recoat = Windows("recoat", said.Recoat, preset?.Recoat, times.Touch);
        var heat = Chosen("heat", said.Heat, preset?.Heat);
        return new()
        {
            Key = product.Key,
            Preset = preset?.Word,
            Name = Chosen("name", said.Name, preset?.Title) ?? product.Key,
            Method = method,
            Drying = Chosen("drying", said.Drying, preset?.Drying) ?? DryingKind.Solvent,
            NetMass = mass,
            NetVolume = volume,
            Price = said.Package?.Price,
            Pack = said.Package?.Pack ?? 1,
            Covers = Chosen("covers", said.Covers, preset?.Covers),
            SolidsByVolume = Chosen("solids", said.Solids, preset?.SolidsByVolume),
            Density = density,
            DryFilm = Chosen("dry-film", said.DryFilm, preset?.DryFilm),
            ThickFilmFactor = ThickFilmFactor(),
            HoldsOnVertical = preset?.HoldsOnVertical,
            Hiding = Hiding(),
            MustHide = said.Hiding is not null || preset is { MustHide: true },
            Lightness = Lightness(),
            CoatsLeast = Chosen("coats", said.Coats?.Least, preset?.CoatsLeast) ?? 1,
            CoatsMost = said.Coats?.Most ?? preset?.CoatsMost ?? PresetBounds.Coats,
            Loss = Chosen("loss", said.Loss, null) ?? method.Loss,
            AtAir = Chosen("at", said.At?.Air, preset?.AtAir) ?? JobDefaults.LabelAir,
            AtHumidity = said.At?.Humidity ?? preset?.AtHumidity ?? JobDefaults.LabelHumidity,
            Times = times,
            TimesAt = TimesAt(times),
            Recoat = recoat,
            Topcoat = Windows("topcoat", said.Topcoat, preset?.Topcoat ?? recoat, times.Touch),
            Missed = Chosen("missed", said.Missed, preset?.Missed) ?? MissedRework.Scuff,
            UseWithin = Chosen("use-within", said.UseWithin, preset?.UseWithin),
            Limits = Limits(),
            Heat = heat,
            HeatPeak = HeatPeak(heat),
            Cure = Listed("cure", said.Cure, preset?.Cure),
            Solvents = Solvents(),
            Hazards = Listed("hazards", said.Hazards, preset?.Hazards),
            LabelSays = said.LabelSays,
            Q10 = preset?.Q10 ?? ProductRows.UsualQ10,
            Family = preset?.Family ?? "",
            Role = preset?.Role,
            Rust = preset?.Rust,
            WantsTooth = preset?.WantsTooth ?? false,
            SoftenedByBrakeFluid = preset?.SoftenedByBrakeFluid ?? false,
            Origins = origins.ToImmutable(),
        };
    }

    private void AskForFields()
    {
        if (preset is not null) return;
        bool bySolids = said.Solids is not null;
        if (said.Covers is null && !bySolids) Ask("covers", "or `solids` with `dry-film`, as there is no `preset` to fill it");
        if (said.Covers is null && bySolids && said.DryFilm is null) Ask("dry-film", "as paint is counted by `solids`");
        bool hasVolume = said.Package?.NetVolume is not null || (said.Package?.NetMass is not null && said.Density is not null);
        if (said.Covers is null && bySolids && !hasVolume) Ask("package", "with `net` as a volume, or as a mass beside `density`, as paint is counted by `solids`");
        if (said.Times is null || Stages(said.Times).All(time => time is null)) Ask("times", "as there is no `preset` to fill it");
        if (said.Recoat.IsEmpty) Ask("recoat", "as there is no `preset` to fill it");
        if (said.Limits is null) Ask("limits", "as there is no `preset` to fill it");
    }

    private void Ask(string key, string why) => problems.Add(product.Mark, Sentences.Needed(Where, key, why));

    private CoatingMethod Method()
    {
        var kind = Chosen("method", said.Method, preset?.Method.Kind) ?? ApplicationMethod.Aerosol;
        return preset?.Method.Kind == kind ? preset.Method : catalogue.Methods.First(method => method.Kind == kind);
    }

    private (Mass? Mass, Volume? Volume) Net(Density? density)
    {
        var own = said.Package;
        bool isSaid = own?.NetMass is not null || own?.NetVolume is not null;
        Note("package", isSaid, preset is not null);
        if (!isSaid) return (preset?.NetMass, preset?.NetVolume);
        double perCubicMetre = density?.KilogramsPerCubicMeter ?? 0;
        if (perCubicMetre <= 0) return (own!.NetMass, own.NetVolume);
        return own!.NetMass is { } mass
            ? (mass, own.NetVolume ?? Volume.FromCubicMeters(mass.Kilograms / perCubicMetre))
            : (Mass.FromKilograms(own.NetVolume!.Value.CubicMeters * perCubicMetre), own.NetVolume);
    }

    private double Hiding()
    {
        Note("hiding", said.Hiding is not null, preset is not null);
        if (said.Hiding?.ContrastRatio is { } ratio) return ratio;
        if (said.Hiding?.Word is { } word) return catalogue.HidingWords.First(row => row.Word == word).ContrastRatio;
        return preset?.Hiding ?? 1;
    }

    private double? Lightness()
    {
        Note("lightness", said.Lightness is not null, preset?.Lightness is not null);
        if (said.Lightness?.LStar is { } lStar) return lStar;
        if (said.Lightness?.Word is { } word) return catalogue.LightnessWords.First(row => row.Word == word).Lightness;
        return preset?.Lightness;
    }

    // The class's times hold for the class's film. A thinner film is not promised to dry sooner.
    private double ThickFilmFactor() => said.DryFilm is { } film && preset?.DryFilm is { } usual && film > usual
        ? Math.Pow(film / usual, catalogue.Figures.Number("thick-film-power"))
        : 1;

    private StageTimes Times()
    {
        var own = said.Times ?? new();
        Note("times", Stages(own).Any(time => time is not null), preset is not null);
        return Filled(own, preset?.Times);
    }

    // Dust follows touch and tape follows handle, unless the class itself says otherwise.
    private StageTimes Filled(LabelTimes own, StageTimes? usual)
    {
        var least = Stages(own).FirstOrDefault(time => time is not null);
        var touch = Time("touch", own.Touch, usual?.Touch) ?? least ?? NoTime;
        var handle = Time("handle", own.Handle, usual?.Handle) ?? own.Through ?? own.Service ?? touch;
        var through = Time("through", own.Through, usual?.Through) ?? own.Service ?? handle;
        var usualDust = usual is not null && usual.Dust != usual.Touch ? usual.Dust : (Duration?)null;
        var usualTape = usual is not null && usual.Tape != usual.Handle ? usual.Tape : (Duration?)null;
        return new(
            Time("dust", own.Dust, usualDust) ?? touch,
            touch,
            Time("tape", own.Tape, usualTape) ?? handle,
            handle,
            through,
            Time("service", own.Service, usual?.Service) ?? through);
    }

    private Duration? Time(string stage, Duration? own, Duration? usual) => Chosen("times." + stage, own, usual);

    // A row of the table that leaves stages out has them in the proportion of the stages that it names, and no shorter than the label.
    private ImmutableArray<StageTimesAt> TimesAt(StageTimes times)
    {
        Note("times-at", !said.TimesAt.IsEmpty, preset is { TimesAt.IsEmpty: false });
        if (said.TimesAt.IsEmpty) return preset?.TimesAt ?? [];
        double atHumidity = (said.At?.Humidity ?? preset?.AtHumidity ?? JobDefaults.LabelHumidity).Percent;
        return
        [
            .. said.TimesAt
                .GroupBy(row => Math.Round(row.Air.Kelvins, 6))
                .OrderBy(rows => rows.Key)
                .Select(rows => Row(rows.OrderBy(row => Math.Abs((row.Humidity?.Percent ?? atHumidity) - atHumidity)).First(), times)),
        ];
    }

    private static StageTimesAt Row(LabelTimesAt row, StageTimes times)
    {
        double scale = Scale(row.Times, times);
        var own = row.Times;
        var touch = own.Touch ?? Scaled(times.Touch, scale);
        var handle = own.Handle ?? Scaled(times.Handle, scale);
        var at = new StageTimes(
            own.Dust ?? (times.Dust == times.Touch ? touch : Scaled(times.Dust, scale)),
            touch,
            own.Tape ?? (times.Tape == times.Handle ? handle : Scaled(times.Tape, scale)),
            handle,
            own.Through ?? Scaled(times.Through, scale),
            own.Service ?? Scaled(times.Service, scale));
        return new(row.Air, at, Ended(row.Recoat, at.Touch)) { Topcoat = Ended(row.Topcoat, at.Touch) };
    }

    private static double Scale(LabelTimes row, StageTimes times)
    {
        Duration[] usual = [times.Dust, times.Touch, times.Tape, times.Handle, times.Through, times.Service];
        double[] logs =
        [
            .. Stages(row).Zip(usual)
                .Where(pair => pair.First is { } own && own > NoTime && pair.Second > NoTime)
                .Select(pair => Math.Log(pair.First!.Value.TotalMinutes / pair.Second.TotalMinutes)),
        ];
        return logs.Length == 0 ? 1 : Math.Exp(logs.Average());
    }

    // Never less than the label's own time: heat promises nothing that the label does not say.
    private static Duration Scaled(Duration time, double scale) => Duration.FromSeconds(Math.Round(time.TotalSeconds * Math.Max(1, scale)));

    private ImmutableArray<CoatWindow> Windows(string key, ImmutableArray<RecoatWindow> own, ImmutableArray<CoatWindow>? usual, Duration touch)
    {
        Note(key, !own.IsEmpty, preset is not null);
        return own.IsEmpty ? usual ?? [] : Ended(own, touch);
    }

    // A window "within b" opens when the coat can be touched. One that closes before it opens is void: others are used, if there are any.
    private static ImmutableArray<CoatWindow> Ended(ImmutableArray<RecoatWindow> windows, Duration touch)
    {
        ImmutableArray<CoatWindow> ended =
            [.. windows.Select(window => new CoatWindow(window.FromTouch ? touch : window.Least ?? NoTime, window.Most))];
        ImmutableArray<CoatWindow> open = [.. ended.Where(window => window.To is not { } to || to >= window.From)];
        return open.IsEmpty ? [.. ended.Select(window => window with { From = window.To ?? window.From })] : open;
    }

    private CoatingLimits Limits()
    {
        var own = said.Limits ?? new();
        var usual = preset?.Limits;
        Note("limits", said.Limits is not null, preset is not null);
        bool isAirSaid = own.Air is not null;
        bool isSurfaceSaid = own.Surface is not null;
        var airLow = isAirSaid ? own.Air!.Value.Least ?? Labels.ColdestAir : usual?.AirLow ?? Labels.ColdestAir;
        var airHigh = isAirSaid ? own.Air!.Value.Most ?? Labels.HottestAir : usual?.AirHigh ?? Labels.HottestAir;
        var humidity = own.Humidity;
        bool isSingle = humidity is { Least: { } least, Most: { } most } && least.Percent.Equals(most.Percent);
        return new(
            airLow,
            airHigh,
            isSurfaceSaid ? own.Surface!.Value.Least ?? Labels.ColdestAir : usual?.SurfaceLow ?? airLow,
            isSurfaceSaid ? own.Surface!.Value.Most ?? Labels.HottestAir : usual?.SurfaceHigh ?? airHigh,
            humidity is null ? usual?.HumidityLow ?? Ratio.Zero : isSingle ? Ratio.Zero : humidity.Value.Least ?? Ratio.Zero,
            humidity is null ? usual?.HumidityHigh ?? Ratio.FromPercent(100) : humidity.Value.Most ?? Ratio.FromPercent(100),
            own.AboveDew ?? usual?.AboveDew ?? Labels.AboveDew);
    }

    private Temperature? HeatPeak(Temperature? heat)
    {
        var peak = Chosen("heat-peak", said.HeatPeak, preset?.HeatPeak);
        if (heat is not { } continuous) return peak;
        return peak is { } brief && brief.Kelvins >= continuous.Kelvins ? brief : continuous;
    }

    private ImmutableArray<SolventContent> Solvents()
    {
        Note("solvents", !said.Solvents.IsEmpty, preset is not null);
        if (said.Solvents.IsEmpty) return preset?.Solvents ?? [];
        var contents = ImmutableArray.CreateBuilder<SolventContent>();
        foreach (var share in said.Solvents)
        {
            if (catalogue.Solvent(share.Name) is { } solvent) contents.Add(new(solvent, share.Share));
            else problems.Add(share.Mark, Sentences.UnknownSolvent(share.Name, catalogue.Solvents.Select(row => row.Name)));
        }

        return contents.ToImmutable();
    }

    private ImmutableArray<T> Listed<T>(string key, ImmutableArray<T> own, ImmutableArray<T>? usual)
    {
        Note(key, !own.IsEmpty, usual is { IsEmpty: false });
        return own.IsEmpty ? usual ?? [] : own;
    }

    private T? Chosen<T>(string key, T? own, T? usual)
        where T : struct
    {
        Note(key, own is not null, usual is not null);
        return own ?? usual;
    }

    private string? Chosen(string key, string? own, string? usual)
    {
        Note(key, own is not null, usual is not null);
        return own ?? usual;
    }

    private void Note(string key, bool isSaid, bool isUsual) =>
        origins[key] = isSaid ? Origin.Job : isUsual ? Origin.Preset : Origin.Default;

    private static Duration?[] Stages(LabelTimes times) =>
        [times.Dust, times.Touch, times.Tape, times.Handle, times.Through, times.Service];
}
