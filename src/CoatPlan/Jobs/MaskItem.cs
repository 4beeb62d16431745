using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>Something that must be masked.</summary>
public sealed record MaskItem
{
    /// <summary>What it is, as the person wrote it.</summary>
    public required string What { get; init; }

    /// <summary>Kind, in the contract's spelling; null: not said.</summary>
    public string? Kind { get; init; }

    /// <summary>Length of tape; null: not said.</summary>
    public Length? Edge { get; init; }

    /// <summary>Area of film or paper; null: not said.</summary>
    public Area? Area { get; init; }

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
