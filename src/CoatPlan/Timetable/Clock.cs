namespace CoatPlan.Timetable;

/// <summary>Minutes from the job's start, and the wall time that they stand for.</summary>
/// <remarks>Times are local wall times and daylight saving is not modelled, so a day always has 1440 minutes.</remarks>
/// <param name="Origin">The wall time of minute 0.</param>
public sealed record Clock(LocalDateTime Origin)
{
    /// <summary>The last day on which anything is planned, counted from the start. Source: the contract of the plan's exit codes.</summary>
    public const int HorizonDays = 60;

    /// <summary>The last minute on which anything is planned.</summary>
    public const int Horizon = HorizonDays * MinutesPerDay;

    private const int MinutesPerDay = NodaConstants.MinutesPerDay;

    /// <summary>The wall time of a minute.</summary>
    public LocalDateTime At(int minute) => Origin.PlusMinutes(minute);

    /// <summary>The first whole minute at or after a wall time.</summary>
    public int MinuteAtOrAfter(LocalDateTime time)
    {
        var seconds = (long)Period.Between(Origin, time, PeriodUnits.Seconds).Seconds;
        return (int)Math.Clamp((long)Math.Ceiling(seconds / 60.0), int.MinValue / 2, int.MaxValue / 2);
    }
}
