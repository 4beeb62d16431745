using CoatPlan.Quantities;

namespace CoatPlan.Presets;

/// <summary>Reads pieces, consumables, tapes and abrasives.</summary>
internal static class SupplyRows
{
    public static Piece Piece(PresetRow row, IReadOnlyCollection<string> materials, IReadOnlyCollection<string> forms)
    {
        var piece = new Piece(
            row.Word,
            row.Measured("outline", QuantityText.Area, value => value.SquareMeters, PresetBounds.Area),
            row.Number("relief", PresetBounds.Factor),
            row.TextOr("painted", ""),
            row.Words("materials", "material", materials),
            row.Words("form", "form", forms).FirstOrDefault() ?? "",
            row.Measured("gauge", QuantityText.Length, value => value.Meters, PresetBounds.Length),
            row.TextOr("note", ""),
            row.Provenance());
        return piece;
    }

    public static Consumable Consumable(PresetRow row, IReadOnlyCollection<string> operations) => new(
        row.Word,
        row.Text("title"),
        row.Text("unit"),
        row.Words("for", "operation", operations),
        row.MeasuredOrNull("does", QuantityText.Area, value => value.SquareMeters, PresetBounds.Area),
        row.TextOr("per", ""),
        row.NumberOrNull("amount", PresetBounds.Amount) ?? 0,
        row.TextOr("range", ""),
        row.TextOr("rule", ""),
        row.Has("pack") ? row.Whole("pack", 1, 10_000) : 1,
        row.Provenance());

    public static MaskingTape Tape(PresetRow row) => new(
        row.Word,
        row.Text("title"),
        row.MeasuredOrNull("dwell", QuantityText.Duration, value => value.TotalMinutes, PresetBounds.Time),
        row.MeasuredOrNull("heat", QuantityText.Temperature, value => value.DegreesCelsius, PresetBounds.Temperature),
        row.MeasuredOrNull("heat-for", QuantityText.Duration, value => value.TotalMinutes, PresetBounds.Time),
        row.TextOr("range", ""),
        row.Provenance());

    public static IEnumerable<Abrasive> Abrasives(PresetRow row)
    {
        var provenance = row.Provenance();
        if (row.Row("sizes") is not { } sizes) return [];
        var grits = ImmutableArray.CreateBuilder<Abrasive>();
        foreach (string key in row.Texts("sizes").Keys)
        {
            var size = sizes.Measured(key, QuantityText.Length, value => value.Meters, PresetBounds.Length);
            var grit = QuantityText.Number(key);
            if (grit.Ok) grits.Add(new(row.Word, (int)grit.Value, size, provenance));
            else sizes.Say(key, Problems.Sentences.Quantity($"grit in {row.Where}", grit.Trouble!));
        }

        return grits.OrderBy(abrasive => abrasive.Grit);
    }

    public static GritTask GritTask(PresetRow row) => new(
        row.Word, row.Text("title"), row.Whole("coarsest", 1, 10_000), row.Whole("finest", 1, 10_000), row.TextOr("pad", ""), row.Provenance());
}
