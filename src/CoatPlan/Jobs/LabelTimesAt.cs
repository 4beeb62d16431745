using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>One row of a label's own table of times by air temperature.</summary>
public sealed record LabelTimesAt
{
    /// <summary>Air temperature of the row.</summary>
    public required Temperature Air { get; init; }

    /// <summary>Relative humidity of the row, 0 to 1; null: not said.</summary>
    public Ratio? Humidity { get; init; }

    /// <summary>Drying times of the row.</summary>
    public LabelTimes Times { get; init; } = new();

    /// <summary>Recoat windows of the row; empty: not said.</summary>
    public ImmutableArray<RecoatWindow> Recoat { get; init; } = [];

    /// <summary>Windows for another product over it; empty: not said.</summary>
    public ImmutableArray<RecoatWindow> Topcoat { get; init; } = [];

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
