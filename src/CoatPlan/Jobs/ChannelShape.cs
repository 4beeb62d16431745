using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>A channel of thin sheet, both faces counted.</summary>
public sealed record ChannelShape : Shape
{
    /// <summary>Width of the web.</summary>
    public required Length Web { get; init; }

    /// <summary>Width of each flange.</summary>
    public required Length Flange { get; init; }

    /// <summary>Length.</summary>
    public required Length Length { get; init; }
}
