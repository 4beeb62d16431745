using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>Layers of paint, first to last.</summary>
public sealed record PaintSystem
{
    /// <summary>Its key in <c>systems</c>, as written.</summary>
    public required string Key { get; init; }

    /// <summary>The layers, one or more.</summary>
    public required ImmutableArray<PaintLayer> Layers { get; init; }

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
