using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>A box.</summary>
public sealed record BoxShape : Shape
{
    /// <summary>Length.</summary>
    public required Length Length { get; init; }

    /// <summary>Width.</summary>
    public required Length Width { get; init; }

    /// <summary>Height.</summary>
    public required Length Height { get; init; }

    /// <summary>Faces that count: 6 all, 5 no top, 4 sides only.</summary>
    public int Faces { get; init; } = 6;
}
