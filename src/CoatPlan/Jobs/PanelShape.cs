using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>A flat rectangle.</summary>
public sealed record PanelShape : Shape
{
    /// <summary>Length.</summary>
    public required Length Length { get; init; }

    /// <summary>Width.</summary>
    public required Length Width { get; init; }

    /// <summary>Sides that count, 1 or 2.</summary>
    public int Sides { get; init; } = 1;
}
