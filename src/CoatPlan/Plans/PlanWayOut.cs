namespace CoatPlan.Plans;

/// <summary>A change of the job with which it can be planned as asked; it was tried by planning it quickly.</summary>
/// <param name="What">What to change.</param>
/// <param name="Finish">When the job would be finished then; a longer search may find it earlier.</param>
public sealed record PlanWayOut(string What, LocalDateTime Finish);
