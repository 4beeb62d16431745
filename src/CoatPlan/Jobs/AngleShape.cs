using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>An angle of thin sheet, both faces counted.</summary>
public sealed record AngleShape : Shape
{
    /// <summary>Width of one leg.</summary>
    public required Length LegA { get; init; }

    /// <summary>Width of the other leg.</summary>
    public required Length LegB { get; init; }

    /// <summary>Length.</summary>
    public required Length Length { get; init; }
}
