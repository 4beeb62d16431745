using CoatPlan.Jobs;
using CoatPlan.Problems;
using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>Reads product classes.</summary>
internal sealed class ProductRows
{
    private static readonly (string, DryingKind)[] DryingWords =
    [
        ("solvent", DryingKind.Solvent), ("oxidation", DryingKind.Oxidation), ("waterborne", DryingKind.Waterborne),
        ("moisture", DryingKind.Moisture), ("two-part", DryingKind.TwoPart),
    ];

    private static readonly (string, MissedRework)[] MissedWords =
        [("scuff", MissedRework.Scuff), ("wait", MissedRework.Wait), ("strip", MissedRework.Strip)];

    private static readonly (string, ProductRole)[] Roles =
    [
        ("primer", ProductRole.Primer), ("converter", ProductRole.Converter), ("promoter", ProductRole.Promoter),
        ("colour", ProductRole.Colour), ("clear", ProductRole.Clear),
    ];

    private static readonly (string, RustRule)[] RustWords = [("never", RustRule.Never), ("tight", RustRule.Tight), ("only", RustRule.Only)];

    private static readonly (string, bool)[] BrakeFluidWords = [("softens", true), ("stands", false)];

    private readonly ImmutableArray<CoatingMethod> methods;
    private readonly ImmutableArray<Solvent> solvents;
    private readonly ImmutableArray<HidingWord> hidings;
    private readonly string[] hazards;

    public ProductRows(
        ImmutableArray<CoatingMethod> methods, ImmutableArray<Solvent> solvents, ImmutableArray<HidingWord> hidings, ImmutableArray<Hazard> hazards)
    {
        this.methods = methods;
        this.solvents = solvents;
        this.hidings = hidings;
        this.hazards = [.. hazards.Select(hazard => hazard.Word)];
    }

    public ProductClass Product(PresetRow row)
    {
        var density = row.Measured("density", QuantityText.Density, value => value.KilogramsPerCubicMeter, PresetBounds.Density);
        var (mass, volume) = Net(row, density);
        var (least, most) = Coats(row);
        var times = Times(row);
        var recoat = Windows(row, "recoat", times.Touch);
        return new()
        {
            Word = row.Word,
            Title = row.Text("title"),
            Family = row.Text("family"),
            Role = row.Choice("role", Roles),
            Rust = row.ChoiceOr("rust", RustWords, RustRule.Never),
            WantsTooth = row.Flag("wants-tooth"),
            SoftenedByBrakeFluid = row.ChoiceOr("brake-fluid", BrakeFluidWords, true),
            NetMass = mass,
            NetVolume = volume,
            Density = density,
            SolidsByMass = Percent(row, "solids-mass"),
            SolidsByVolume = Percent(row, "solids"),
            DryFilm = Film(row, "dry-film"),
            Covers = row.Measured("covers", QuantityText.Area, value => value.SquareMeters, PresetBounds.Area),
            CoatsLeast = least,
            CoatsMost = most,
            CoatsUsual = row.Has("coats-usual") ? row.Whole("coats-usual", 1, PresetBounds.Coats) : least,
            Hiding = Hiding(row),
            MustHide = row.Flag("must-hide", none: true),
            Lightness = row.NumberOrNull("lightness", PresetBounds.Lightness),
            Method = Method(row),
            HoldsOnVertical = Film(row, "holds"),
            Drying = row.Choice("drying", DryingWords),
            Q10 = row.NumberOrNull("q10", PresetBounds.Q10) ?? UsualQ10,
            AtAir = JobDefaults.LabelAir,
            AtHumidity = JobDefaults.LabelHumidity,
            Times = times,
            TimesAt = [],
            Recoat = recoat,
            Topcoat = row.Has("topcoat") ? Windows(row, "topcoat", times.Touch) : recoat,
            Missed = row.ChoiceOr("missed", MissedWords, MissedRework.Scuff),
            UseWithin = row.MeasuredOrNull("use-within", QuantityText.Duration, value => value.TotalMinutes, PresetBounds.Time),
            Limits = Limits(row),
            Heat = Heat(row, "heat"),
            HeatPeak = Heat(row, "heat-peak"),
            Cure = [.. row.Items("cure").Select(Stage)],
            Solvents = Contents(row),
            Hazards = row.Words("hazards", "hazard", hazards),
            Ranges = row.Texts("range"),
            Moved = row.Texts("moved"),
            Note = row.TextOr("note", ""),
            Provenance = row.Provenance(),
        };
    }

    /// <summary>The drying rate doubles for each 10 K. Source: trade training note, common practice.</summary>
    public const double UsualQ10 = 2;

    private static Ratio Percent(PresetRow row, string key) =>
        row.Measured(key, QuantityText.Ratio, value => value.Percent, PresetBounds.Percent);

    private static Length Film(PresetRow row, string key) =>
        row.Measured(key, QuantityText.Length, value => value.Meters, PresetBounds.Length);

    private static Temperature Heat(PresetRow row, string key) =>
        row.Measured(key, QuantityText.Temperature, value => value.DegreesCelsius, PresetBounds.Temperature);

    private static (Mass Mass, Volume Volume) Net(PresetRow row, Density density)
    {
        bool isVolume = QuantityText.DimensionOf(row.Text("net")) == Dimension.Volume;
        if (isVolume)
        {
            var volume = row.Measured("net", QuantityText.Volume, value => value.Liters, PresetBounds.NetVolume);
            return (Mass.FromKilograms(volume.CubicMeters * density.KilogramsPerCubicMeter), volume);
        }

        var mass = row.Measured("net", QuantityText.Mass, value => value.Kilograms, PresetBounds.NetMass);
        double perCubicMetre = density.KilogramsPerCubicMeter;
        return (mass, perCubicMetre > 0 ? Volume.FromCubicMeters(mass.Kilograms / perCubicMetre) : default);
    }

    private static (int Least, int Most) Coats(PresetRow row)
    {
        string text = row.Text("coats");
        if (text.Length == 0) return (1, 1);
        int dash = text.IndexOf('-', StringComparison.Ordinal);
        var first = QuantityText.Number(dash < 0 ? text : text[..dash]);
        var second = QuantityText.Number(dash < 0 ? text : text[(dash + 1)..]);
        bool fits = first.Ok && second.Ok && first.Value >= 1 && first.Value <= second.Value && second.Value <= PresetBounds.Coats
            && first.Value == Math.Floor(first.Value) && second.Value == Math.Floor(second.Value);
        if (fits) return ((int)first.Value, (int)second.Value);
        row.Say("coats", Sentences.OutOfRange($"`coats` in {row.Where}", text, $"a number or range of coats, 1 to {PresetBounds.Coats}"));
        return (1, 1);
    }

    private static StageTimes Times(PresetRow row)
    {
        if (row.Row("times") is not { } times)
        {
            row.Say("times", Sentences.MissingKey("times", row.Where, "{touch: 30 min, handle: 4 h, through: 24 h}"));
            return new(default, default, default, default, default, default);
        }

        var touch = Time(times, "touch");
        var handle = Time(times, "handle");
        var through = Time(times, "through");
        var read = new StageTimes(TimeOr(times, "dust", touch), touch, TimeOr(times, "tape", handle), handle, through, TimeOr(times, "service", through));
        times.Finish();
        return read;
    }

    private static Duration Time(PresetRow times, string key) =>
        times.Measured(key, QuantityText.Duration, value => value.TotalMinutes, PresetBounds.Time);

    private static Duration TimeOr(PresetRow times, string key, Duration none) => times.Has(key) ? Time(times, key) : none;

    private static ImmutableArray<CoatWindow> Windows(PresetRow row, string key, Duration touch)
    {
        var windows = ImmutableArray.CreateBuilder<CoatWindow>();
        foreach (string text in row.Words(key))
        {
            if (WindowText.Read(text) is { } window) windows.Add(new(window.FromTouch ? touch : window.Least ?? Duration.Zero, window.Most));
            else row.Say(key, Sentences.NotAWindow($"`{key}` in {row.Where}", text));
        }

        if (windows.Count == 0) row.Say(key, Sentences.MissingKey(key, row.Where, "[10 min-1 h, after 24 h]"));
        return windows.ToImmutable();
    }

    private static CoatingLimits Limits(PresetRow row)
    {
        if (row.Row("limits") is not { } limits)
        {
            row.Say("limits", Sentences.MissingKey("limits", row.Where, "{air: 50-90 °F, humidity: 65 %}"));
            return new(default, default, default, default, default, default, default);
        }

        var (airLow, airHigh) = TemperatureRange(limits, "air");
        var (surfaceLow, surfaceHigh) = limits.Has("surface") ? TemperatureRange(limits, "surface") : (airLow, airHigh);
        var (humidityLow, humidityHigh) = HumidityRange(limits);
        var aboveDew = limits.MeasuredOrNull("above-dew", QuantityText.TemperatureDelta, value => value.Kelvins, PresetBounds.Difference);
        limits.Finish();
        return new(airLow, airHigh, surfaceLow, surfaceHigh, humidityLow, humidityHigh, aboveDew ?? Labels.AboveDew);
    }

    private static (Temperature Low, Temperature High) TemperatureRange(PresetRow row, string key)
    {
        var range = row.Measured(key, QuantityText.TemperatureRange, value => (value.Least ?? value.Most)!.Value.DegreesCelsius, PresetBounds.Temperature);
        return (range.Least ?? Labels.ColdestAir, range.Most ?? Labels.HottestAir);
    }

    private static (Ratio Low, Ratio High) HumidityRange(PresetRow row)
    {
        if (!row.Has("humidity")) return (Ratio.Zero, Ratio.FromPercent(100));
        var range = row.Measured("humidity", QuantityText.RatioRange, value => (value.Most ?? value.Least)!.Value.Percent, PresetBounds.Percent);
        bool single = range.Least is { } least && range.Most is { } most && least.Percent == most.Percent;
        return (single ? Ratio.Zero : range.Least ?? Ratio.Zero, range.Most ?? Ratio.FromPercent(100));
    }

    private static CureStage Stage(PresetRow row)
    {
        var stage = new CureStage(Heat(row, "at"), Time(row, "for"));
        row.Finish();
        return stage;
    }

    private CoatingMethod Method(PresetRow row) => row.Choice("method", [.. methods.Select(method => (method.Word, method))]);

    private double Hiding(PresetRow row)
    {
        string text = row.Text("hiding");
        if (hidings.FirstOrDefault(word => word.Word == text) is { } known) return known.ContrastRatio;
        if (text.Length > 0 && char.IsAsciiDigit(text[0])) return row.Number("hiding", PresetBounds.SomeShare);
        if (text.Length > 0) row.Say("hiding", Sentences.UnknownWord("hiding", text, hidings.Select(word => word.Word), null));
        return 1;
    }

    private ImmutableArray<SolventContent> Contents(PresetRow row)
    {
        var contents = ImmutableArray.CreateBuilder<SolventContent>();
        foreach (var (key, _, layer) in row.Entries("solvents", merged: false))
        {
            var share = new PresetRow($"`solvents` of {row.Where}", [layer with { Map = (Jobs.Yaml.MapNode)layer.Map.Find("solvents")!.Value }])
                .Measured(key.Text, QuantityText.Ratio, value => value.Percent, PresetBounds.Percent);
            if (Solvents.Find(solvents, key.Text) is { } solvent) contents.Add(new(solvent, share));
            else layer.File.Problems.Add(key.Mark, Sentences.UnknownWord("solvent", key.Text, solvents.Select(known => known.Name), null));
        }

        return contents.ToImmutable();
    }
}
