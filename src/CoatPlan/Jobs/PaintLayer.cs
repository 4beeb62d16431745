using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>One product of a paint system.</summary>
public sealed record PaintLayer
{
    /// <summary>Key of the product.</summary>
    public required string Product { get; init; }

    /// <summary>Full coats, 1 or more; null: the label's least.</summary>
    public int? Coats { get; init; }

    /// <summary>Whether one mist coat goes before them, counted half.</summary>
    public bool Mist { get; init; }

    /// <summary>Whether just the bare spots are sprayed (<c>only: bare</c>).</summary>
    public bool OnlyBare { get; init; }

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
