using CoatPlan.App.Wording;
using CoatPlan.Presets;

namespace CoatPlan.App.Desk.Asking;

/// <summary>What parts, how many, of what, in which state, how large.</summary>
internal static class PartQuestions
{
    private const string Stays = "stays on the vehicle";

    private const string ComesOff = "comes off";

    private const string UsualMaterial = "steel";

    /// <summary>The next question about the parts; null where they are known.</summary>
    /// <param name="draft">What is known.</param>
    /// <param name="catalogue">The presets.</param>
    public static GuideQuestion? Next(GuideDraft draft, Catalogue catalogue)
    {
        if (draft.Parts is not { } parts)
            return Which(draft, catalogue);

        for (var at = 0; at < parts.Length; at++)
        {
            if (About(draft, at, catalogue) is { } question)
                return question;
        }

        return null;
    }

    /// <summary>What is known of a part, on one line.</summary>
    /// <param name="part">The part.</param>
    public static string Said(GuidePart part)
    {
        var count = part.Count is { } several && several != "1" ? $" ({several})" : "";
        var known = new[] { part.Material, part.Finish, part.Conditions is { } conditions ? string.Join(", ", conditions) : null, part.Area }.OfType<string>();
        return $"{part.Called}{count}{(known.Any() ? $": {string.Join(", ", known)}" : "")}";
    }

    private static GuideQuestion Which(GuideDraft draft, Catalogue catalogue) => GuideQuestion.Some("What parts shall be refinished? Mark all of them.",
        [.. PresetTables.Pieces(catalogue, draft.PrintUnits).Rows.Select(row => new PickerRow(row.Word, row.Means)), new PickerRow(SurfaceEdits.AnotherPiece, "anything else; its name and area are asked")],
        words => draft with { Parts = [.. words.Select(word => PartOf(draft, catalogue.Pieces.FirstOrDefault(piece => piece.Name == word)))] });

    private static GuidePart PartOf(GuideDraft draft, Piece? piece) => new()
    {
        Piece = piece,
        Name = piece is null ? null : char.ToUpperInvariant(piece.Name[0]) + piece.Name[1..],
        Stays = draft.Purpose == GuidePurpose.Class ? false : null,
    };

    private static GuideQuestion? About(GuideDraft draft, int at, Catalogue catalogue)
    {
        var part = draft.Parts!.Value[at];
        return part switch
        {
            { Name: null } => GuideQuestion.Line("What is the other piece called?", draft.Purpose == GuidePurpose.Class ? "Bench panel" : "Bracket",
                typed => typed.Length == 0 ? null : draft.WithPart(at, known => known with { Name = typed })) with { Expected = "a name" },
            { Count: null } => GuideQuestion.Line($"{part.Called}: how many of them{(draft.Purpose == GuidePurpose.Class ? " at each station" : "")}?", "1", typed => draft.WithPart(at, known => known with { Count = typed })),
            { Material: null } => GuideQuestion.One($"{part.Called}: what is it made of?", Rows(PresetTables.Materials(catalogue)),
                word => draft.WithPart(at, known => known with { Material = word })) with { Chosen = [part.Piece?.Materials.FirstOrDefault() ?? UsualMaterial], Explains = "A magnet holds to steel and cast iron." },
            { Finish: null } => GuideQuestion.One($"{part.Called}: what is on it now?", Rows(PresetTables.Finishes(catalogue)),
                word => draft.WithPart(at, known => known with { Finish = word })) with { Chosen = [draft.Purpose == GuidePurpose.Class ? "bare" : "factory paint"] },
            { Conditions: null } => GuideQuestion.Some($"{part.Called}: in which state is it? Mark all that apply.", Rows(PresetTables.Conditions(catalogue)),
                words => draft.WithPart(at, known => known with { Conditions = words })),
            { Area: null } => GuideQuestion.Line($"{part.Called}: how much area has one of them?", Area(part, draft.IsMetric), typed => draft.WithPart(at, known => known with { Area = typed }))
                with { Explains = "What stands there is the usual figure; length times width of what is sprayed is good enough. Shapes can be added up later." },
            { Stays: null } => GuideQuestion.One($"{part.Called}: does it come off?",
                [new PickerRow(Stays, "masked and sprayed in place"), new PickerRow(ComesOff, "taken off, tagged, sprayed on the bench, refitted")],
                word => draft.WithPart(at, known => known with { Stays = word == Stays })),
            _ => null,
        };
    }

    private static ImmutableArray<PickerRow> Rows(PresetTable table) => [.. table.Rows.Select(row => new PickerRow(row.Word, row.Means))];

    private static string Area(GuidePart part, bool metric) => part.Piece is not { } piece ? metric ? "0.1 m2" : "1 ft2"
        : metric ? $"{Written.Number(piece.Outline.SquareMeters, 2)} m2"
        : $"{Written.Number(piece.Outline.SquareFeet, 1)} ft2";
}
