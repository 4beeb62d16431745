using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>Who works, and when.</summary>
public sealed record Crew
{
    /// <summary>People at each station, 1 or more.</summary>
    public required int People { get; init; }

    /// <summary>Stations that each do all the surfaces on their own piece, 1 or more.</summary>
    public int Stations { get; init; } = JobDefaults.Stations;

    /// <summary>Working hours, in the order of the file; see <see cref="WorkingHours.On"/> for what holds on a date.</summary>
    public required ImmutableArray<HoursEntry> Hours { get; init; }

    /// <summary>Time at the start of each working span, zero or more.</summary>
    public Duration SetUp { get; init; } = Duration.Zero;

    /// <summary>Time at the end of each working span, zero or more.</summary>
    public Duration PutAway { get; init; } = Duration.Zero;

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
