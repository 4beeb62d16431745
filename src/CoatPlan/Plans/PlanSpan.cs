namespace CoatPlan.Plans;

/// <summary>A stretch of local wall time.</summary>
/// <param name="From">Its start.</param>
/// <param name="To">Its end, after its start.</param>
public sealed record PlanSpan(LocalDateTime From, LocalDateTime To);
