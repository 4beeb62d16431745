namespace CoatPlan.Jobs;

/// <summary>Times from the end of a coat to each stage of drying; null: not said.</summary>
public sealed record LabelTimes
{
    /// <summary>Dust no longer sticks; default: touch.</summary>
    public Duration? Dust { get; init; }

    /// <summary>Dry to the touch.</summary>
    public Duration? Touch { get; init; }

    /// <summary>Can be taped over; default: handle.</summary>
    public Duration? Tape { get; init; }

    /// <summary>Can be handled and refitted.</summary>
    public Duration? Handle { get; init; }

    /// <summary>Dry through.</summary>
    public Duration? Through { get; init; }

    /// <summary>Ready for service.</summary>
    public Duration? Service { get; init; }
}
