using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Prep;
using CoatPlan.Presets;

namespace CoatPlan.Supplies;

/// <summary>Which cans are bought, and for how much.</summary>
public static class PaintSupplies
{
    /// <summary>What is bought of each product, in the order of the demands.</summary>
    /// <param name="demands">How much of each the job takes.</param>
    /// <param name="have">What is on the shelf.</param>
    public static ImmutableArray<PaintSupply> Of(ImmutableArray<ProductDemand> demands, ImmutableArray<HaveEntry> have) =>
        [.. demands.Select(demand => Of(demand, Shelf.PackagesOf(demand.Label, have)))];

    /// <summary>Warnings of paint on the shelf that could not be counted: it is named, never passed over.</summary>
    /// <param name="have">What is on the shelf.</param>
    /// <param name="labels">The labels of the job.</param>
    public static ImmutableArray<Warning> Warnings(ImmutableArray<HaveEntry> have, Labels labels)
    {
        ArgumentNullException.ThrowIfNull(labels);
        return
        [
            .. have.Where(entry => entry.IsProduct && Shelf.Packages(labels[entry.Key], entry.Amount) is null).Select(entry => new Warning(
                "data-missing", null, entry.Key,
                $"`have` gives {labels[entry.Key].Name} in a unit that its label does not allow to be counted, so nothing was taken off: give packages, or the net contents of one under `package`.")),
        ];
    }

    /// <summary>Price of so many packages, packs bought whole; null where the price of a package is unknown and something is bought.</summary>
    /// <param name="label">The product.</param>
    /// <param name="packages">Packages wanted, at least 0.</param>
    internal static decimal? Price(Label label, int packages)
    {
        if (packages == 0)
            return 0;
        return label.Price * PackCount.Packs(packages, label.Pack) * label.Pack;
    }

    /// <summary>Packages to buy when some are on the shelf.</summary>
    internal static int ToBuy(int needed, double onShelf) => WholePackages.For(Math.Max(0, needed - onShelf));

    private static PaintSupply Of(ProductDemand demand, double onShelf)
    {
        var buy = ToBuy(demand.Cans, onShelf);
        return new PaintSupply(demand, onShelf, buy, PackCount.Packs(buy, demand.Label.Pack), Price(demand.Label, buy));
    }
}
