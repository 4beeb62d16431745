using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>What a panel that was sprayed for a test gave of one product; null: not read.</summary>
public sealed record TestPanel
{
    /// <summary>Key of the product.</summary>
    public required string Product { get; init; }

    /// <summary>Area that was coated, once.</summary>
    public required Area Area { get; init; }

    /// <summary>Full coats that were put on, 1 or more.</summary>
    public required int Coats { get; init; }

    /// <summary>What all those coats used of a package: the difference of two weighings, or a volume or a share of a package.</summary>
    public Amount? Used { get; init; }

    /// <summary>Fewest coats at which black and white below no longer differed.</summary>
    public int? HidesAfter { get; init; }

    /// <summary>Dry film of all the coats together.</summary>
    public Length? Film { get; init; }

    /// <summary>When each stage was reached, from the end of the last coat.</summary>
    public LabelTimes? Times { get; init; }

    /// <summary>Air at which it dried; null: as the label's times.</summary>
    public Temperature? Air { get; init; }

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
