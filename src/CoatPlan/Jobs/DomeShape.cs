using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>The curved side of a cap cut from a sphere.</summary>
public sealed record DomeShape : Shape
{
    /// <summary>Diameter of its rim.</summary>
    public required Length Diameter { get; init; }

    /// <summary>Height over the rim.</summary>
    public required Length Height { get; init; }
}
