namespace CoatPlan.Timetable;

/// <summary>A moment at which the whole job can stop for a week without rework.</summary>
/// <param name="After">Id of the step after which it stops.</param>
/// <param name="At">The end of that step.</param>
/// <param name="Why">What makes it so, and what comes next.</param>
public sealed record RestPoint(string After, LocalDateTime At, string Why);
