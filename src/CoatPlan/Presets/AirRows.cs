namespace CoatPlan.Presets;

/// <summary>Reads respirators, hazards, neighbours, masked things and how hot places get.</summary>
internal static class AirRows
{
    private static readonly string[] Masks = ["quarter", "half", "full", "hood", "loose"];

    public static RespiratorKind Respirator(PresetRow row)
    {
        row.TextOr("note", "");
        var factors = ImmutableDictionary.CreateBuilder<string, int>(StringComparer.Ordinal);
        if (row.Row("factors") is { } masks)
        {
            foreach (string mask in Masks.Where(masks.Has)) factors.Add(mask, masks.Whole(mask, 1, 1_000_000));
            masks.Finish();
        }

        return new(row.Word, row.Text("title"), row.Flag("supplies-air"), factors.ToImmutable(), row.Provenance());
    }

    public static Hazard Hazard(PresetRow row) => new(row.Word, row.Text("means"), row.TextOr("respirator", ""), row.Provenance());

    public static Neighbour Neighbour(PresetRow row) => new(row.Word, row.TextOr("warning", ""), row.Text("care"), row.Provenance());

    public static MaskKind MaskKind(PresetRow row) => new(row.Word, row.Text("rate"), row.Flag("never"), row.Text("why"), row.Provenance());

    public static ServiceHeat ServiceHeat(PresetRow row) => new(
        row.Word,
        row.Temperature("usual"),
        row.Temperature("peak"),
        row.TextOr("note", ""),
        row.Provenance());
}
