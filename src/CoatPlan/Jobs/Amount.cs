using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>How much of a thing, in exactly one of these ways.</summary>
public sealed record Amount
{
    /// <summary>Packages or pieces, zero or more.</summary>
    public double? Count { get; init; }

    /// <summary>Mass.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Volume.</summary>
    public Volume? Volume { get; init; }

    /// <summary>Length.</summary>
    public Length? Length { get; init; }

    /// <summary>Area.</summary>
    public Area? Area { get; init; }
}
