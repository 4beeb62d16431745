using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>The side of a cone or of a cone cut off.</summary>
public sealed record ConeShape : Shape
{
    /// <summary>Diameter at the base.</summary>
    public required Length Base { get; init; }

    /// <summary>Diameter at the top; zero: a point.</summary>
    public Length Top { get; init; } = Length.Zero;

    /// <summary>Height, upright.</summary>
    public required Length Height { get; init; }
}
