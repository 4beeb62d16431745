using CoatPlan.Problems;

namespace CoatPlan.Presets;

/// <summary>Reads pieces, consumables, tapes and abrasives.</summary>
internal static class SupplyRows
{
    public static Piece Piece(PresetRow row, IReadOnlyCollection<string> materials, IReadOnlyCollection<string> forms)
    {
        var piece = new Piece(
            row.Word,
            row.Area("outline"),
            row.Number("relief", PresetBounds.Factor),
            row.TextOr("painted", ""),
            row.Words("materials", "material", materials),
            row.Words("form", "form", forms).FirstOrDefault() ?? "",
            row.Length("gauge"),
            row.TextOr("note", ""),
            row.Provenance());
        return piece;
    }

    public static Consumable Consumable(PresetRow row, IReadOnlyCollection<string> operations) => new(
        row.Word,
        row.Text("title"),
        row.Text("unit"),
        row.Words("for", "operation", operations),
        row.Has("does") ? row.Area("does") : null,
        row.TextOr("per", ""),
        row.NumberOrNull("amount", PresetBounds.Amount) ?? 0,
        row.TextOr("range", ""),
        row.TextOr("rule", ""),
        row.Has("pack") ? row.Whole("pack", 1, 10_000) : 1,
        (decimal?)row.NumberOrNull("price", PresetBounds.Price),
        row.Has("also") ? row.Words("also") : [],
        row.Provenance());

    public static MaskingTape Tape(PresetRow row) => new(
        row.Word,
        row.Text("title"),
        row.Has("dwell") ? row.Time("dwell") : null,
        row.Has("heat") ? row.Temperature("heat") : null,
        row.Has("heat-for") ? row.Time("heat-for") : null,
        row.TextOr("range", ""),
        row.Provenance());

    public static IEnumerable<Abrasive> Abrasives(PresetRow row)
    {
        var provenance = row.Provenance();
        if (row.Row("sizes") is not { } sizes) return [];
        var grits = ImmutableArray.CreateBuilder<Abrasive>();
        foreach (string key in row.Texts("sizes").Keys)
        {
            var size = sizes.Length(key);
            bool isGrit = PlainFigure.Split(key, out double grit, out string behind) && behind.Length == 0 && grit >= 1 && grit == Math.Floor(grit);
            if (isGrit) grits.Add(new(row.Word, (int)grit, size, provenance));
            else sizes.Say(key, Sentences.WrongKind($"a grit of {row.Where}", $"`{key}`", "a whole number such as `320`"));
        }

        return grits.OrderBy(abrasive => abrasive.Grit);
    }

    public static GritTask GritTask(PresetRow row) => new(
        row.Word, row.Text("title"), row.Whole("coarsest", 1, 10_000), row.Whole("finest", 1, 10_000), row.TextOr("pad", ""), row.Provenance());
}
