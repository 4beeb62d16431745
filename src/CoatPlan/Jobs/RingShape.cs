using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>A flat ring.</summary>
public sealed record RingShape : Shape
{
    /// <summary>Outer diameter.</summary>
    public required Length Outer { get; init; }

    /// <summary>Inner diameter, less than the outer.</summary>
    public required Length Inner { get; init; }

    /// <summary>Sides that count, 1 or 2.</summary>
    public int Sides { get; init; } = 1;
}
