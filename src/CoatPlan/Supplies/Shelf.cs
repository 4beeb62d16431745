using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Supplies;

/// <summary>What a job has on the shelf.</summary>
internal static class Shelf
{
    /// <summary>Packages of a product: a mass or a volume counts as its share of a package, 0 where the package is unknown.</summary>
    public static double PackagesOf(Label label, ImmutableArray<HaveEntry> have) => have
        .Where(entry => entry.IsProduct && entry.Key == label.Key)
        .Sum(entry => entry.Amount switch
        {
            { Count: { } count } => count,
            { Mass: { } mass } when label.NetMass is { } net => mass / net,
            { Volume: { } volume } when label.NetVolume is { } net => volume / net,
            _ => 0,
        });

    /// <summary>How many of a consumable: by its word or by what it is called; 0 for an amount in another unit.</summary>
    public static double NumberOf(Consumable consumable, ImmutableArray<HaveEntry> have) => have
        .Where(entry => !entry.IsProduct && (Same(entry.Key, consumable.Word) || Same(entry.Key, consumable.Title)))
        .Sum(entry => entry.Amount switch
        {
            { Count: { } count } => count,
            { Volume: { } volume } when consumable.Unit == "qt" => volume.UsQuarts,
            { Area: { } area } when consumable.Unit == "ft2" => area.SquareFeet,
            _ => 0,
        });

    private static bool Same(string entry, string word) =>
        string.Equals(entry.Replace(' ', '-'), word.Replace(' ', '-'), StringComparison.OrdinalIgnoreCase);
}
