using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>A pressure hold of the cooling system.</summary>
public sealed record PressureTest
{
    /// <summary>Rating on the cap; null: not said.</summary>
    public Pressure? Cap { get; init; }

    /// <summary>Pressure at the start.</summary>
    public required Pressure Start { get; init; }

    /// <summary>Pressure at the end.</summary>
    public required Pressure End { get; init; }

    /// <summary>How long it was held; null: not said.</summary>
    public Duration? After { get; init; }

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
