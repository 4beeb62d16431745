using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>A room as a box.</summary>
public sealed record RoomSize
{
    /// <summary>Inside length, more than zero.</summary>
    public required Length Length { get; init; }

    /// <summary>Inside width, more than zero.</summary>
    public required Length Width { get; init; }

    /// <summary>Inside height, more than zero.</summary>
    public required Length Height { get; init; }
}
