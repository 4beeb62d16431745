using CoatPlan.Presets;

namespace CoatPlan.App.Desk.Asking;

/// <summary>Which cans, what they cost, and in which order they go on each part.</summary>
internal static class CanQuestions
{
    private const string NothingMore = "nothing more";

    private const string Suffix = "-aerosol";

    /// <summary>The next question about the cans; null where they are known.</summary>
    /// <param name="draft">What is known.</param>
    /// <param name="catalogue">The presets.</param>
    public static GuideQuestion? Next(GuideDraft draft, Catalogue catalogue)
    {
        if (draft.Cans is not { } cans)
            return Which(draft, catalogue);

        for (var at = 0; at < cans.Length; at++)
        {
            if (cans[at].Price is null)
                return Price(draft, cans, at);
        }

        for (var at = 0; at < draft.Parts!.Value.Length; at++)
        {
            if (!draft.Parts.Value[at].HasAllLayers)
                return Layer(draft, cans, at, catalogue);
        }

        return null;
    }

    private static GuideQuestion Which(GuideDraft draft, Catalogue catalogue) => GuideQuestion.Some("Which cans are there, or shall be bought? Mark all of them.",
        [.. PresetTables.Products(catalogue, draft.PrintUnits).Rows.Select(row => new PickerRow(row.Word, row.Means))],
        words => draft with
        {
            Cans = [.. words.Select(word => new GuideCan(word.EndsWith(Suffix, StringComparison.Ordinal) ? word[..^Suffix.Length] : word, word))],
            Parts = [.. draft.Parts!.Value.Select(part => part with { Layers = [], HasAllLayers = false })],
        }) with { Explains = "These are classes, not makes: mark what each can is. What its own label says can be copied later, under fields, products." };

    private static GuideQuestion Price(GuideDraft draft, ImmutableArray<GuideCan> cans, int at) =>
        GuideQuestion.Line($"{cans[at].Key}: what does one can cost?", "", typed => draft with { Cans = cans.SetItem(at, cans[at] with { Price = typed }) })
            with { Explains = "A bare number, such as 9.50; nothing where it is not known." };

    private static GuideQuestion Layer(GuideDraft draft, ImmutableArray<GuideCan> cans, int at, Catalogue catalogue)
    {
        var part = draft.Parts!.Value[at];
        var left = cans.Where(can => !part.Layers.Any(layer => GuidePart.CanOf(layer) == can.Key)).ToImmutableArray();
        var rows = left.SelectMany(can => Rows(part, can, catalogue)).ToImmutableArray();
        if (part.Layers.IsEmpty)
        {
            return GuideQuestion.One($"{part.Called}: which can goes on it first?", rows, word => With(draft, at, part.Layers.Add(word), cans.Length == 1))
                with { Chosen = [First(part, left, catalogue)] };
        }

        return GuideQuestion.One($"{part.Called}: {string.Join(", then ", part.Layers)}. And then?", [.. rows, new PickerRow(NothingMore, "the last coat is on")],
            word => word == NothingMore ? With(draft, at, part.Layers, true) : With(draft, at, part.Layers.Add(word), part.Layers.Length + 1 == cans.Length))
            with { Chosen = [HasColour(part, cans, catalogue) ? NothingMore : First(part, left, catalogue)] };
    }

    private static GuideDraft With(GuideDraft draft, int at, ImmutableArray<string> layers, bool all) =>
        draft.WithPart(at, known => known with { Layers = layers, HasAllLayers = all });

    private static bool HasColour(GuidePart part, ImmutableArray<GuideCan> cans, Catalogue catalogue) =>
        cans.Any(can => part.Layers.Any(layer => GuidePart.CanOf(layer) == can.Key) && catalogue.Product(can.Preset).Role is ProductRole.Colour or ProductRole.Clear);

    // What holds to the metal comes before what is seen.
    private static string First(GuidePart part, ImmutableArray<GuideCan> cans, Catalogue catalogue) =>
        Rows(part, cans.OrderBy(can => Rank(catalogue.Product(can.Preset).Role)).First(), catalogue)[0].Word;

    // Over old paint a primer is wanted where the prep laid metal open, and seldom elsewhere.
    private static ImmutableArray<PickerRow> Rows(GuidePart part, GuideCan can, Catalogue catalogue)
    {
        var product = catalogue.Product(can.Preset);
        var everywhere = new PickerRow(can.Key, product.Title);
        return product.Role == ProductRole.Primer && part.Layers.IsEmpty && catalogue.Finish(part.Finish!).IsPaint
            ? [new PickerRow(can.Key + GuidePart.BareOnly, $"{product.Title}; the old paint is left as it is"), everywhere]
            : [everywhere];
    }

    private static int Rank(ProductRole role) => role switch
    {
        ProductRole.Converter => 0,
        ProductRole.Promoter => 1,
        ProductRole.Primer => 2,
        ProductRole.Colour => 3,
        _ => 4,
    };
}
