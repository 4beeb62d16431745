namespace CoatPlan.Plans;

/// <summary>A moment at which the whole job can stop for a week without rework.</summary>
/// <param name="After">Id of the step after which it stops.</param>
/// <param name="At">Local wall time at which that step ends.</param>
/// <param name="Why">What makes it so, and what comes next.</param>
public sealed record PlanRestPoint(string After, LocalDateTime At, string Why);
