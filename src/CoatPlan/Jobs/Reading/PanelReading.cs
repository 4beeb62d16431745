using CoatPlan.Problems;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads <c>test-panels</c>.</summary>
internal static class PanelReading
{
    /// <summary>Reads the panels in the order of the file.</summary>
    /// <param name="job">The job.</param>
    /// <param name="products">Keys of the products that a panel may name.</param>
    public static ImmutableArray<TestPanel> Read(MapReading job, IReadOnlySet<string> products) =>
        [.. job.Maps("test-panels").Select(map => Panel(map, products)).OfType<TestPanel>()];

    private static TestPanel? Panel(MapReading map, IReadOnlySet<string> products)
    {
        string? product = map.Text("product");
        if (product is not null && !products.Contains(product)) map.Note("product", Sentences.UnknownName("product", product, products));
        var area = map.Area("area");
        int? coats = map.Whole("coats");
        int? hidesAfter = map.Whole("hides-after");
        var used = map.Find("used") is { } node ? AmountReading.Read(node, "`used`", map.Context) : null;
        if (hidesAfter > coats) map.Note("hides-after", Sentences.Order("`hides-after`", map.Tried("hides-after"), $"at most `coats`, `{map.Tried("coats")}`"));
        if (used is { Length: not null } or { Area: not null })
        {
            map.Note("used", Sentences.WrongKind("`used`", $"`{map.Tried("used")}`", "a mass, a volume or a share of a package"));
        }

        var film = map.Length("film");
        var times = map.Map("times") is { } read ? LabelReading.Times(read) : null;
        var air = map.Temperature("air");
        if (product is null || area is null || coats is null) return null;
        return new()
        {
            Product = product,
            Area = area.Value,
            Coats = coats.Value,
            Used = used,
            HidesAfter = hidesAfter,
            Film = film,
            Times = times,
            Air = air,
            Mark = map.Mark,
        };
    }
}
