namespace CoatPlan.Timetable;

/// <summary>A job with dates: the whole of it, or the part that could be placed and why there is no more.</summary>
public sealed record DatedJob
{
    /// <summary>The steps by start, then by the order of the work.</summary>
    public required ImmutableArray<DatedStep> Steps { get; init; }

    /// <summary>End of the last step; null where nothing could be placed.</summary>
    public required LocalDateTime? Finish { get; init; }

    /// <summary>When the last film reaches service; null where a coat could not be placed.</summary>
    public required LocalDateTime? InService { get; init; }

    /// <summary>Whether every coat could be placed.</summary>
    public bool IsWhole => InService is not null;

    /// <summary>No plan of the job finishes before this; null where nothing could be argued.</summary>
    public required LocalDateTime? LowerBound { get; init; }

    /// <summary>Why there is no plan that meets what was asked; empty where there is one.</summary>
    public required ImmutableArray<string> Reasons { get; init; }

    /// <summary>Why somebody has nothing to do, for every such stretch of the working hours from the start or <c>as-of</c> to the finish.</summary>
    public ImmutableArray<IdleStretch> Idle { get; init; } = [];

    /// <summary>The moments at which the whole job can stop for a week without rework, in order.</summary>
    public ImmutableArray<RestPoint> RestPoints { get; init; } = [];

    /// <summary>Working spans from the job's start to a day after its finish, set-up and put-away included.</summary>
    public required ImmutableArray<(LocalDateTime From, LocalDateTime To)> Spans { get; init; }
}
