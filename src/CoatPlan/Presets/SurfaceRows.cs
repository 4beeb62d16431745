namespace CoatPlan.Presets;

/// <summary>Reads old finishes, conditions and words for lightness and hiding.</summary>
internal static class SurfaceRows
{
    private const int OldLead = 1;
    private const int AlwaysLead = 2;

    public static Finish Finish(PresetRow row)
    {
        int lead = row.Choice("lead", "never", "old", "always");
        return new(
            row.Word, row.Text("title"), row.NumberOrNull("lightness", PresetBounds.Lightness), row.Flag("paint"), lead == AlwaysLead, lead >= OldLead,
            row.Flag("gloss"), row.Provenance());
    }

    public static Condition Condition(PresetRow row, IReadOnlyCollection<string> operations) => new()
    {
        Word = row.Word,
        Title = row.Text("title"),
        BareShare = row.Number("bare-share", PresetBounds.Share),
        ChipEdgePerSquareMetre = row.InUnitOr("chip-edge", "m/m2", PresetBounds.Minutes, 0),
        Greasy = row.Flag("greasy"),
        Rust = row.Flag("rust"),
        Scale = row.Flag("scale"),
        Pits = row.Flag("pits"),
        WhiteCorrosion = row.Flag("white-corrosion"),
        LooseFilm = row.Flag("loose-film"),
        Asks = row.Words("asks", "operation", operations),
        Provenance = row.Provenance(),
    };

    public static LightnessWord Lightness(PresetRow row) => new(row.Word, row.Number("l-star", PresetBounds.Lightness), row.Provenance());

    public static HidingWord Hiding(PresetRow row) => new(row.Word, row.Number("contrast", PresetBounds.SomeShare), row.Provenance());
}
