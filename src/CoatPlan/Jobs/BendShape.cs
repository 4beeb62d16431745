using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>The side of a bent tube.</summary>
public sealed record BendShape : Shape
{
    /// <summary>Diameter of the tube.</summary>
    public required Length Diameter { get; init; }

    /// <summary>Radius of the bend, to the middle of the tube.</summary>
    public required Length Radius { get; init; }

    /// <summary>Angle of the bend, more than 0 and at most 360°.</summary>
    public Angle Angle { get; init; } = JobDefaults.BendAngle;
}
