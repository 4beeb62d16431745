using CoatPlan.Jobs;
using CoatPlan.Prep;
using CoatPlan.Presets;

namespace CoatPlan.Supplies;

/// <summary>What is on the shelf besides paint, taken off need by need: what one need leaves is there for the next that goes by the same name.</summary>
internal sealed class ConsumableStock
{
    private readonly ImmutableArray<HaveEntry> entries;
    private readonly double[] left;
    private readonly Figures figures;

    /// <summary>The shelf of a job, nothing taken yet.</summary>
    public ConsumableStock(ImmutableArray<HaveEntry> have, Figures figures)
    {
        entries = [.. have.Where(entry => !entry.IsProduct)];
        left = [.. entries.Select(_ => 1.0)];
        this.figures = figures;
    }

    /// <summary>Takes up to so many of a consumable.</summary>
    /// <param name="consumable">What is needed.</param>
    /// <param name="needed">How many, at least 0.</param>
    /// <returns>How many there were, at most what is needed.</returns>
    public double Take(Consumable consumable, double needed)
    {
        var taken = 0.0;
        for (var i = 0; i < entries.Length && taken < needed; i++)
        {
            if (!consumable.IsCalled(entries[i].Key) || NumberOf(entries[i].Amount, consumable, figures) is not (> 0 and { } all))
                continue;
            var here = Math.Min(needed - taken, all * left[i]);
            left[i] -= here / all;
            taken += here;
        }

        return taken;
    }

    /// <summary>How many of a consumable were on the shelf before anything was taken.</summary>
    /// <param name="consumable">The consumable.</param>
    public double All(Consumable consumable) => entries
        .Where(entry => consumable.IsCalled(entry.Key))
        .Sum(entry => Math.Max(0, NumberOf(entry.Amount, consumable, figures) ?? 0));

    /// <summary>Warnings of what stands on the shelf or among the prices and could not be counted: it is named, never passed over.</summary>
    /// <param name="job">Its shelf and its prices.</param>
    /// <param name="catalogue">The consumables.</param>
    public static ImmutableArray<Warning> Unknown(Job job, Catalogue catalogue)
    {
        var warnings = ImmutableArray.CreateBuilder<Warning>();
        foreach (var entry in job.Have.Where(entry => !entry.IsProduct))
        {
            var called = catalogue.Consumables.Where(row => row.IsCalled(entry.Key)).ToArray();
            if (called.Length == 0)
                warnings.Add(NotKnown("have", entry.Key, "no product of the job and no consumable of the presets is called", "nothing was taken off for it", [.. job.Products.Select(product => product.Key)], catalogue));
            else if (called.All(row => NumberOf(entry.Amount, row, catalogue.Figures) is null))
                warnings.Add(new Warning("data-missing", null, null, $"`have` gives {entry.Key} in a unit that it is not counted by, so nothing was taken off: give how many of “{called[0].Unit}”."));
        }

        foreach (var price in job.Prices?.Consumables ?? [])
        {
            if (!catalogue.Consumables.Any(row => row.IsCalled(price.Key)))
                warnings.Add(NotKnown("prices", price.Key, "no consumable of the presets is called", "its price counts for nothing", [], catalogue));
        }

        return warnings.ToImmutable();
    }

    private static Warning NotKnown(string key, string name, string why, string so, ImmutableArray<string> products, Catalogue catalogue)
    {
        var near = Problems.Nearest.To(name, products) ?? Problems.Nearest.To(name, catalogue.Consumables.SelectMany(row => row.Also.Insert(0, row.Word)));
        var meant = near is null ? "" : $" Did you mean {near}?";
        return new Warning("data-missing", null, null, $"`{key}` names {name}, which {why}, so {so}.{meant} `coatplan presets consumable` lists them.");
    }

    /// <summary>An amount in the consumable's own unit; null where it is given in another.</summary>
    private static double? NumberOf(Amount amount, Consumable consumable, Figures figures) => amount switch
    {
        { Count: { } count } => count,
        { Volume: { } volume } when consumable.Unit == "qt" => volume.UsQuarts,
        { Area: { } area } when consumable.Unit == "ft2" => area.SquareFeet,
        { Length: { } length } when consumable.Unit == "roll" => length / figures.Length("tape-roll"),
        _ => null,
    };
}
