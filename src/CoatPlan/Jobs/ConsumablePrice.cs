using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>What one pack of a consumable costs.</summary>
public sealed record ConsumablePrice
{
    /// <summary>The consumable, as the person calls it.</summary>
    public required string Key { get; init; }

    /// <summary>Price of one pack, in the job's currency, 0 or more.</summary>
    public required decimal Price { get; init; }

    /// <summary>How many of its unit are in one pack; null: as its preset says.</summary>
    public int? Pack { get; init; }

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
