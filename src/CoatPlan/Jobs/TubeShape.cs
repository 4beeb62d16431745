using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>A straight tube.</summary>
public sealed record TubeShape : Shape
{
    /// <summary>Diameter.</summary>
    public required Length Diameter { get; init; }

    /// <summary>Length.</summary>
    public required Length Length { get; init; }

    /// <summary>Closed ends that count, 0 to 2.</summary>
    public int Ends { get; init; }

    /// <summary>Whether the inside counts too.</summary>
    public bool Inside { get; init; }
}
