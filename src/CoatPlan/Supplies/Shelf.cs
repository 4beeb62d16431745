using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Supplies;

/// <summary>What a job has on the shelf.</summary>
internal static class Shelf
{
    /// <summary>Packages of a product: a mass or a volume counts as its share of a package, 0 where the package is unknown.</summary>
    public static double PackagesOf(Label label, ImmutableArray<HaveEntry> have) => have
        .Where(entry => entry.IsProduct && entry.Key == label.Key)
        .Sum(entry => Packages(label, entry.Amount) ?? 0);

    /// <summary>An amount in packages; null where it is given in a unit that the label does not allow.</summary>
    public static double? Packages(Label label, Amount amount) => amount switch
    {
        { Count: { } count } => count,
        { Mass: { } mass } when label.NetMass is { } net => mass / net,
        { Volume: { } volume } when label.NetVolume is { } net => volume / net,
        _ => null,
    };
}
