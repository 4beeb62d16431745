using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>A solvent in a product.</summary>
public sealed record SolventShare
{
    /// <summary>Name or CAS number, as written.</summary>
    public required string Name { get; init; }

    /// <summary>Upper end of its share by mass of the whole contents, 0 to 1.</summary>
    public required Ratio Share { get; init; }

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
