using System.Globalization;
using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;
using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads what a label and data sheet say of a product.</summary>
internal static class LabelReading
{
    /// <summary>Reads a label from a map whose table has <see cref="JobKeys.LabelKeys"/>.</summary>
    public static ProductLabel Read(MapReading label) => new()
    {
        Name = label.Text("name"),
        Package = Package(label.Map("package")),
        Covers = label.Area("covers"),
        Solids = label.Ratio("solids"),
        Density = label.Density("density"),
        DryFilm = label.Length("dry-film"),
        Hiding = Hiding(label),
        Lightness = LightnessReading.Read(label),
        Coats = Coats(label),
        Method = label.Word<ApplicationMethod>("method"),
        Loss = label.Ratio("loss"),
        Drying = label.Word<DryingKind>("drying"),
        At = label.Map("at") is { } at ? new() { Air = at.Temperature("air"), Humidity = at.Ratio("humidity") } : null,
        Times = label.Map("times") is { } times ? Times(times) : null,
        TimesAt = TimesAt(label),
        Recoat = WindowReading.Read(label, "recoat"),
        Topcoat = WindowReading.Read(label, "topcoat"),
        Missed = label.Word<MissedRework>("missed"),
        UseWithin = label.Duration("use-within"),
        Limits = label.Map("limits") is { } limits ? Limits(limits) : null,
        Heat = label.Temperature("heat"),
        HeatPeak = HeatPeak(label),
        Cure = Cure(label),
        Solvents = Solvents(label),
        Hazards = label.WordList("hazards"),
        LabelSays = label.TextList("label-says"),
    };

    private static Package? Package(MapReading? package)
    {
        if (package is null) return null;
        var (mass, volume) = Net(package);
        return new() { NetMass = mass, NetVolume = volume, Price = package.Money("price"), Pack = package.Whole("pack") };
    }

    private static (Mass? Mass, Volume? Volume) Net(MapReading package)
    {
        if (package.Find("net") is not { } node) return (null, null);
        var context = package.Context;
        bool isVolume = node is TextNode text && QuantityText.DimensionOf(text.Text) == Dimension.Volume;
        return isVolume
            ? (null, Values.Quantity(node, "`net`", QuantityText.Volume, v => v.Milliliters, JobRanges.NetVolume, Dimension.Volume, context))
            : (Values.Quantity(node, "`net`", QuantityText.Mass, v => v.Grams, JobRanges.NetMass, Dimension.Mass, context), null);
    }

    private static Hiding? Hiding(MapReading label)
    {
        if (label.Find("hiding") is not TextNode node)
        {
            if (label.Find("hiding") is { } other) Values.Scalar(other, "`hiding`", "a word or a contrast ratio", label.Context);
            return null;
        }

        if (!StartsLikeNumber(node)) return Values.Word(node, new("hiding", _ => JobWords.Hiding), label.Context) is { } word ? new() { Word = word } : null;
        var ratio = Values.Quantity(node, "`hiding`", QuantityText.Number, v => v, JobRanges.ContrastRatio, Dimension.None, label.Context);
        return ratio is null ? null : new() { ContrastRatio = ratio };
    }

    /// <summary>Whether a text is meant as a number.</summary>
    public static bool StartsLikeNumber(TextNode node)
    {
        string text = node.Text.TrimStart();
        return text.Length > 0 && (char.IsAsciiDigit(text[0]) || text[0] is '.' or '-' or '+');
    }

    private static CoatRange? Coats(MapReading label)
    {
        if (label.Find("coats") is not { } node) return null;
        const string due = "a number of coats or a range such as `2-3`";
        if (Values.Scalar(node, "`coats`", due, label.Context) is not { } scalar) return null;
        string[] ends = scalar.Text.Replace('–', '-').Replace(" to ", "-", StringComparison.OrdinalIgnoreCase).Split('-', StringSplitOptions.TrimEntries);
        var counts = ends.Select(end => int.TryParse(end, NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : (int?)null).ToArray();
        if (counts.Length > 2 || counts.Any(count => count is null))
        {
            label.Note("coats", Sentences.WrongKind("`coats`", $"`{scalar.Text}`", due));
            return null;
        }

        if (counts.Any(count => !JobRanges.Coats.Hold(count!.Value)))
        {
            label.Note("coats", Sentences.OutOfRange("`coats`", scalar.Text, JobRanges.Coats.ToString()));
            return null;
        }

        if (counts[0] <= counts[^1]) return new(counts[0]!.Value, counts[^1]!.Value);
        label.Note("coats", Sentences.Order("`coats`", scalar.Text, "the lesser number first"));
        return null;
    }

    /// <summary>Reads the times of a film, which rise from stage to stage.</summary>
    public static LabelTimes Times(MapReading map)
    {
        var times = new LabelTimes
        {
            Dust = map.Duration("dust"),
            Touch = map.Duration("touch"),
            Tape = map.Duration("tape"),
            Handle = map.Duration("handle"),
            Through = map.Duration("through"),
            Service = map.Duration("service"),
        };
        CheckOrder(map, ("dust", times.Dust), ("touch", times.Touch), ("handle", times.Handle), ("through", times.Through), ("service", times.Service));
        CheckOrder(map, ("touch", times.Touch), ("tape", times.Tape), ("through", times.Through));
        return times;
    }

    private static void CheckOrder(MapReading map, params ReadOnlySpan<(string Key, Duration? Time)> stages)
    {
        (string Key, Duration Time)? before = null;
        foreach (var (key, time) in stages)
        {
            if (time is not { } own) continue;
            if (before is { } earlier && own < earlier.Time)
            {
                map.Note(key, Sentences.Order($"`{key}`", map.Tried(key), $"no less than `{earlier.Key}`, `{map.Tried(earlier.Key)}`"));
            }

            before = (key, own);
        }
    }

    private static ImmutableArray<LabelTimesAt> TimesAt(MapReading label)
    {
        var rows = ImmutableArray.CreateBuilder<LabelTimesAt>();
        foreach (var row in label.Maps("times-at"))
        {
            var times = Times(row);
            var recoat = WindowReading.Read(row, "recoat");
            var topcoat = WindowReading.Read(row, "topcoat");
            var humidity = row.Ratio("humidity");
            if (row.Temperature("air") is not { } air) continue;
            var first = rows.FirstOrDefault(earlier => Math.Abs(earlier.Air.Kelvins - air.Kelvins) < 1e-6 && earlier.Humidity?.Percent == humidity?.Percent);
            if (first is not null) row.Note("air", Sentences.RepeatedName("row of", row.Tried("air"), first.Mark));
            rows.Add(new() { Air = air, Humidity = humidity, Times = times, Recoat = recoat, Topcoat = topcoat, Mark = row.Mark });
        }

        return rows.ToImmutable();
    }

    private static LabelLimits Limits(MapReading limits)
    {
        foreach (string key in (ReadOnlySpan<string>)["air", "surface"])
        {
            bool isSingle = limits.TemperatureRange(key) is { Least: { } least, Most: { } most } && least.Kelvins.Equals(most.Kelvins);
            if (isSingle) limits.Note(key, Sentences.WrongKind($"`{key}`", $"`{limits.Tried(key)}`, a single figure", "a range such as `50-90 °F`"));
        }

        var humidity = limits.RatioRange("humidity");
        if (humidity is { Least: { } low, Most: { } high } && low.Percent.Equals(high.Percent)) humidity = new(null, high);
        return new()
        {
            Air = limits.TemperatureRange("air"),
            Surface = limits.TemperatureRange("surface"),
            Humidity = humidity,
            AboveDew = limits.TemperatureDelta("above-dew"),
        };
    }

    private static Temperature? HeatPeak(MapReading label)
    {
        var peak = label.Temperature("heat-peak");
        if (peak is { } p && label.Temperature("heat") is { } heat && p.Kelvins < heat.Kelvins)
        {
            label.Note("heat-peak", Sentences.Order("`heat-peak`", label.Tried("heat-peak"), $"at least `heat`, `{label.Tried("heat")}`"));
        }

        return peak;
    }

    private static ImmutableArray<CureStage> Cure(MapReading label)
    {
        var stages = ImmutableArray.CreateBuilder<CureStage>();
        foreach (var stage in label.Maps("cure"))
        {
            var at = stage.Temperature("at");
            var held = stage.Duration("for");
            if (at is not null && held is not null) stages.Add(new(at.Value, held.Value));
        }

        return stages.ToImmutable();
    }

    private static ImmutableArray<SolventShare> Solvents(MapReading label)
    {
        var solvents = ImmutableArray.CreateBuilder<SolventShare>();
        var form = new RangeForm(Dimension.Ratio, JobRanges.Share, "10-15 %");
        double leastSum = 0;
        foreach (var entry in label.Entries("solvents"))
        {
            string name = entry.Key.Text.Trim();
            if (JobWords.Find(name, label.Context.Vocabulary.Solvents) is { } known) name = known;
            else if (!label.Context.Vocabulary.Solvents.IsEmpty && !label.Context.Problems.IsFull)
            {
                label.Context.Problems.Add(entry.Key.Mark, Sentences.UnknownSolvent(name, label.Context.Vocabulary.Solvents));
            }

            var share = Values.Range(entry.Value, $"the share of `{name}`", QuantityText.RatioRange, v => v.Percent, form, label.Context);
            if (share is not { } range) continue;
            leastSum += range.Least?.Percent ?? 0;
            solvents.Add(new() { Name = name, Share = range.Most ?? Ratio.FromPercent(100), Mark = entry.Key.Mark });
        }

        const double RoundingPercent = 1e-9;
        if (leastSum > 100 + RoundingPercent) label.Note("solvents", Sentences.SharesOverWhole(Values.Written(leastSum) + " %"));
        return solvents.ToImmutable();
    }
}
