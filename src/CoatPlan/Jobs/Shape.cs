using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>A shape whose area is part of a surface; the shapes in this folder are all there are.</summary>
public abstract record Shape
{
    private protected Shape()
    {
    }

    /// <summary>How many of it, 1 or more.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Shapes taken away, once for the shape as a whole, whatever its count and sides.</summary>
    public ImmutableArray<Shape> Less { get; init; } = [];

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
