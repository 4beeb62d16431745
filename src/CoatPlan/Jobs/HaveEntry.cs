using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>Something on the shelf.</summary>
public sealed record HaveEntry
{
    /// <summary>Key of a product, or a consumable.</summary>
    public required string Key { get; init; }

    /// <summary>Whether <see cref="Key"/> is a product of the job.</summary>
    public bool IsProduct { get; init; }

    /// <summary>How much of it.</summary>
    public required Amount Amount { get; init; }

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
