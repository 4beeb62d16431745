using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>Readings of checks made before the work.</summary>
public sealed record Checks
{
    /// <summary>Pressure of each cylinder, in the order of the file; empty: not checked.</summary>
    public ImmutableArray<Pressure> CylinderPressures { get; init; } = [];

    /// <summary>Pressure hold of the cooling system; null: not tested.</summary>
    public PressureTest? PressureTest { get; init; }

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
