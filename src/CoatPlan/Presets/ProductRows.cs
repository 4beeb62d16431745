using CoatPlan.Jobs;
using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;
using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>Reads product classes.</summary>
internal sealed class ProductRows
{
    // Each in the order of its type.
    private static readonly string[] DryingWords = ["solvent", "oxidation", "waterborne", "moisture", "two-part"];
    private static readonly string[] MissedWords = ["scuff", "wait", "strip"];
    private static readonly string[] Roles = ["primer", "converter", "promoter", "colour", "clear"];
    private static readonly string[] RustWords = ["never", "tight", "only"];
    private static readonly string[] BrakeFluidWords = ["softens", "stands"];

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
        var density = row.Density("density");
        bool isVolume = IsVolume(row.Text("net"));
        double perCubicMetre = density.KilogramsPerCubicMeter;
        var volume = isVolume ? NetVolume(row) : default;
        var mass = isVolume ? Mass.FromKilograms(volume.CubicMeters * perCubicMetre) : NetMass(row);
        if (!isVolume && perCubicMetre > 0) volume = Volume.FromCubicMeters(mass.Kilograms / perCubicMetre);
        var (least, most) = Coats(row);
        var times = Times(row);
        var recoat = Windows(row, "recoat", times.Touch);
        return new()
        {
            Word = row.Word,
            Title = row.Text("title"),
            Family = row.Text("family"),
            Role = (ProductRole)row.Choice("role", Roles),
            Rust = (RustRule)row.ChoiceOr("rust", RustWords),
            WantsTooth = row.Flag("wants-tooth"),
            SoftenedByBrakeFluid = row.ChoiceOr("brake-fluid", BrakeFluidWords) == 0,
            NetMass = mass,
            NetVolume = volume,
            Density = density,
            SolidsByMass = row.Percent("solids-mass", PresetBounds.Percent),
            SolidsByVolume = row.Percent("solids", PresetBounds.Percent),
            DryFilm = row.Length("dry-film"),
            Covers = row.Area("covers"),
            CoatsLeast = least,
            CoatsMost = most,
            CoatsUsual = row.Has("coats-usual") ? row.Whole("coats-usual", 1, PresetBounds.Coats) : least,
            Hiding = Hiding(row),
            MustHide = row.Flag("must-hide", none: true),
            Lightness = row.NumberOrNull("lightness", PresetBounds.Lightness),
            Method = Method(row),
            HoldsOnVertical = row.Length("holds"),
            Drying = (DryingKind)row.Choice("drying", DryingWords),
            Q10 = row.NumberOrNull("q10", PresetBounds.Q10) ?? UsualQ10,
            AtAir = JobDefaults.LabelAir,
            AtHumidity = JobDefaults.LabelHumidity,
            Times = times,
            TimesAt = [],
            Recoat = recoat,
            Topcoat = row.Has("topcoat") ? Windows(row, "topcoat", times.Touch) : recoat,
            Missed = (MissedRework)row.ChoiceOr("missed", MissedWords),
            UseWithin = row.Has("use-within") ? row.Time("use-within") : null,
            Limits = Limits(row),
            Heat = row.Temperature("heat"),
            HeatPeak = row.Temperature("heat-peak"),
            Cure = row.Has("cure") ? [.. row.Items("cure").Select(Stage)] : [],
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

    private static Volume NetVolume(PresetRow row)
    {
        const double MostMillilitres = 1_000;
        bool isPlain = PlainFigure.Split(row.PlainText("net") ?? "", out double number, out string unit)
            && number is > 0 and <= MostMillilitres;
        return (isPlain ? unit : "") switch
        {
            "fl oz" => Volume.FromUsOunces(number),
            "mL" => Volume.FromMilliliters(number),
            "qt" => Volume.FromUsQuarts(number),
            _ => row.Measured("net", QuantityText.Volume, value => value.Liters, PresetBounds.NetVolume),
        };
    }

    private static Mass NetMass(PresetRow row)
    {
        const double MostOunces = 1_000;
        bool isPlain = PlainFigure.Split(row.PlainText("net") ?? "", out double number, out string unit)
            && number is > 0 and <= MostOunces;
        return (isPlain ? unit : "") switch
        {
            "oz" => Mass.FromOunces(number),
            "g" => Mass.FromGrams(number),
            _ => row.Measured("net", QuantityText.Mass, value => value.Kilograms, PresetBounds.NetMass),
        };
    }

    // Asked of the reader of spellings only where the unit is none of the plain ones.
    private static bool IsVolume(string net)
    {
        PlainFigure.Split(net, out _, out string unit);
        return unit switch
        {
            "oz" or "g" => false,
            "fl oz" or "mL" or "qt" => true,
            _ => QuantityText.DimensionOf(net) == Dimension.Volume,
        };
    }

    private static (int Least, int Most) Coats(PresetRow row)
    {
        string text = row.Text("coats");
        if (text.Length == 0) return (1, 1);
        int dash = text.IndexOf('-', StringComparison.Ordinal);
        bool areNumbers = PlainFigure.Split(dash < 0 ? text : text[..dash], out double first, out string behindFirst)
            & PlainFigure.Split(dash < 0 ? text : text[(dash + 1)..], out double second, out string behindSecond);
        bool fits = areNumbers && behindFirst.Length == 0 && behindSecond.Length == 0 && first >= 1 && first <= second && second <= PresetBounds.Coats
            && first == Math.Floor(first) && second == Math.Floor(second);
        if (fits) return ((int)first, (int)second);
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

        var touch = times.Time("touch");
        var handle = times.Time("handle");
        var through = times.Time("through");
        var read = new StageTimes(TimeOr(times, "dust", touch), touch, TimeOr(times, "tape", handle), handle, through, TimeOr(times, "service", through));
        times.Finish();
        return read;
    }

    private static Duration TimeOr(PresetRow times, string key, Duration none) => times.Has(key) ? times.Time(key) : none;

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
        var aboveDew = limits.Has("above-dew") ? limits.Difference("above-dew") : Labels.AboveDew;
        limits.Finish();
        return new(airLow, airHigh, surfaceLow, surfaceHigh, humidityLow, humidityHigh, aboveDew);
    }

    private static (Temperature Low, Temperature High) TemperatureRange(PresetRow row, string key)
    {
        bool isPlain = PlainFigure.SplitRange(row.PlainText(key) ?? "", out double least, out double most, out string unit)
            && unit == "°F" && PresetBounds.Temperature.Hold(least) && PresetBounds.Temperature.Hold(most);
        if (isPlain) return (Temperature.FromDegreesFahrenheit(least), Temperature.FromDegreesFahrenheit(most));
        var range = row.Measured(key, QuantityText.TemperatureRange, value => (value.Least ?? value.Most)!.Value.DegreesCelsius, PresetBounds.Temperature);
        return (range.Least ?? Labels.ColdestAir, range.Most ?? Labels.HottestAir);
    }

    private static (Ratio Low, Ratio High) HumidityRange(PresetRow row)
    {
        if (!row.Has("humidity")) return (Ratio.Zero, Ratio.FromPercent(100));
        string text = row.PlainText("humidity") ?? "";
        if (PlainFigure.Split(text, out double single, out string unit) && unit == "%" && PresetBounds.Percent.Hold(single)) return (Ratio.Zero, Ratio.FromPercent(single));
        bool isPlain = PlainFigure.SplitRange(text, out double low, out double high, out unit)
            && unit == "%" && PresetBounds.Percent.Hold(low) && PresetBounds.Percent.Hold(high);
        if (isPlain) return (Ratio.FromPercent(low), Ratio.FromPercent(high));
        var range = row.Measured("humidity", QuantityText.RatioRange, value => (value.Most ?? value.Least)!.Value.Percent, PresetBounds.Percent);
        bool isSingle = range.Least is { } least && range.Most is { } most && least.Percent == most.Percent;
        return (isSingle ? Ratio.Zero : range.Least ?? Ratio.Zero, range.Most ?? Ratio.FromPercent(100));
    }

    private static CureStage Stage(PresetRow row)
    {
        var stage = new CureStage(row.Temperature("at"), row.Time("for"));
        row.Finish();
        return stage;
    }

    private CoatingMethod Method(PresetRow row) => methods[row.Choice("method", [.. methods.Select(method => method.Word)])];

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
        foreach (var entry in row.Entries("solvents", merged: false))
        {
            var file = entry.Layer.File;
            var share = new PresetRow($"`solvents` of {row.Where}", [entry.Layer with { Map = (MapNode)entry.Layer.Map.Find("solvents")!.Value }])
                .Percent(entry.Key.Text, PresetBounds.Percent);
            if (Solvents.Find(solvents, entry.Key.Text) is { } solvent) contents.Add(new(solvent, share));
            else file.Problems.Add(entry.Key.Mark, Sentences.UnknownWord("solvent", entry.Key.Text, solvents.Select(known => known.Name), null));
        }

        return contents.ToImmutable();
    }
}
