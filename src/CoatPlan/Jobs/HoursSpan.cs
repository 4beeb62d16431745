namespace CoatPlan.Jobs;

/// <summary>A span of working hours; one that ends at or before its start ends on the next day (22:00-02:00).</summary>
/// <param name="Start">Start, local wall time.</param>
/// <param name="End">End, local wall time; midnight (00:00) is the end of the day.</param>
public readonly record struct HoursSpan(LocalTime Start, LocalTime End)
{
    /// <summary>Whether the span ends on the day after it began.</summary>
    public bool EndsNextDay => End <= Start;

    /// <summary>The span that begins on a date.</summary>
    /// <param name="date">The date on which the span starts.</param>
    /// <returns>Start and end, the end later than the start.</returns>
    public (LocalDateTime Start, LocalDateTime End) On(LocalDate date) =>
        (date + Start, (EndsNextDay ? date.PlusDays(1) : date) + End);
}
