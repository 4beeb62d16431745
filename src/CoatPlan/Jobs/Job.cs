using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>What the person asked for: one job file, read and checked.</summary>
public sealed record Job
{
    /// <summary>The format number of the contract.</summary>
    public int Format { get; init; } = 1;

    /// <summary>What the job is called (key <c>job</c>).</summary>
    public required string Name { get; init; }

    /// <summary>Free text; empty: none.</summary>
    public string Notes { get; init; } = "";

    /// <summary>How plans print.</summary>
    public PrintUnits Units { get; init; } = PrintUnits.Us;

    /// <summary>How quantities are told in those units.</summary>
    public QuantityFormat UnitFormat => Units == PrintUnits.Metric ? QuantityFormat.Metric : QuantityFormat.Us;

    /// <summary>Nothing is planned before it; local wall time.</summary>
    public required LocalDateTime Start { get; init; }

    /// <summary>When everything must be back together; null: not asked.</summary>
    public LocalDateTime? FinishBy { get; init; }

    /// <summary>Nothing undone is planned before it; null: a plan from the start.</summary>
    public LocalDateTime? AsOf { get; init; }

    /// <summary>Share added to the likely paint demand, 0 or more.</summary>
    public Ratio Reserve { get; init; } = JobDefaults.Reserve;

    /// <summary>Longest time that tape stays on.</summary>
    public Duration TapeLimit { get; init; } = JobDefaults.TapeLimit;

    /// <summary>Year in which the vehicle was built; null: unknown.</summary>
    public int? Built { get; init; }

    /// <summary>Where the work is done.</summary>
    public required Place Place { get; init; }

    /// <summary>Who works, and when.</summary>
    public required Crew Crew { get; init; }

    /// <summary>The products, in the order of the file.</summary>
    public ImmutableArray<JobProduct> Products { get; init; } = [];

    /// <summary>The paint systems, in the order of the file.</summary>
    public ImmutableArray<PaintSystem> Systems { get; init; } = [];

    /// <summary>The surfaces, in the order of the file; ids are unique.</summary>
    public ImmutableArray<JobSurface> Surfaces { get; init; } = [];

    /// <summary>What is on the shelf.</summary>
    public ImmutableArray<HaveEntry> Have { get; init; } = [];

    /// <summary>What panels that were sprayed for a test gave, in the order of the file.</summary>
    public ImmutableArray<TestPanel> TestPanels { get; init; } = [];

    /// <summary>What a quote counts with; null: no quote.</summary>
    public Prices? Prices { get; init; }

    /// <summary>Readings of checks made before the work; null: none.</summary>
    public Checks? Checks { get; init; }

    /// <summary>What has been done already, in the order of the file.</summary>
    public ImmutableArray<DoneEntry> Done { get; init; } = [];
}
