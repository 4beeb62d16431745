using CoatPlan.Problems;

namespace CoatPlan.Presets;

/// <summary>Reads the kinds of work and their rates.</summary>
internal static class OperationRows
{
    private const int LastStage = 10;
    private const int LastOrder = 10_000;

    public static Operation Operation(PresetRow row)
    {
        var rates = row.Rows("rates").Select(rate => Finished(rate, Rate)).ToImmutableArray();
        if (rates.IsEmpty) row.Say("rates", Sentences.MissingKey("rates", row.Where, "one rate or more"));
        return new()
        {
            Word = row.Word,
            Title = row.Text("title"),
            Stage = row.Whole("stage", 1, LastStage),
            Order = row.Whole("order", 1, LastOrder),
            MakesDust = row.Flag("dust"),
            Breakable = !row.Flag("unbreakable"),
            HotWork = row.Flag("hot"),
            Sprays = row.Flag("sprays"),
            OncePerJob = row.Flag("once"),
            Why = row.Text("why"),
            Rates = rates,
            Provenance = row.Provenance(),
        };
    }

    private static OperationRate Rate(PresetRow row) => new()
    {
        Name = row.Word,
        For = row.Words("for"),
        MinutesPerSquareMetre = Minutes(row, "per-m2"),
        FixedMinutes = Minutes(row, "fixed"),
        MinutesPerMetre = Minutes(row, "per-m"),
        MinutesPerPlug = Minutes(row, "per-plug"),
        MinutesPerPackage = Minutes(row, "per-package"),
        DwellMinutes = Minutes(row, "dwell"),
        Ranges = row.Texts("range"),
        Provenance = row.Provenance(),
    };

    private static double Minutes(PresetRow row, string key) => row.InUnitOr(key, "min", PresetBounds.Minutes, 0);

    private static T Finished<T>(PresetRow row, Func<PresetRow, T> read)
    {
        var record = read(row);
        row.Finish();
        return record;
    }
}
