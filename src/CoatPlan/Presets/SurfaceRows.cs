namespace CoatPlan.Presets;

/// <summary>Reads old finishes, conditions and words for lightness and hiding.</summary>
internal static class SurfaceRows
{
    private static readonly (string, (bool Always, bool WhenOld))[] LeadWords = [("never", (false, false)), ("old", (false, true)), ("always", (true, true))];

    public static Finish Finish(PresetRow row)
    {
        var (always, whenOld) = row.Choice("lead", LeadWords);
        return new(
            row.Word, row.Text("title"), row.NumberOrNull("lightness", PresetBounds.Lightness), row.Flag("paint"), always, whenOld,
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
