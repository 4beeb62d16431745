using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>A flat disc.</summary>
public sealed record DiscShape : Shape
{
    /// <summary>Diameter.</summary>
    public required Length Diameter { get; init; }

    /// <summary>Sides that count, 1 or 2.</summary>
    public int Sides { get; init; } = 1;
}
