namespace CoatPlan.Obstacles;

/// <summary>A change of the job with which it can be planned; it was tried.</summary>
/// <param name="What">What to change.</param>
/// <param name="Finish">When the job would be finished then.</param>
internal sealed record WayOut(string What, LocalDateTime Finish);
