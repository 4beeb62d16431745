namespace CoatPlan.Plans;

/// <summary>Why there is no plan that meets what was asked: a rule without which there is one, or several that stand in the way together.</summary>
/// <param name="Rules">The rules; of several, none can be kept.</param>
/// <param name="What">It in words, as among the plan's reasons.</param>
/// <param name="Finish">When the job would be finished without them.</param>
public sealed record PlanObstacle(ImmutableArray<PlanRule> Rules, string What, LocalDateTime Finish);
