namespace CoatPlan.Plans;

/// <summary>What to breathe through, and why.</summary>
/// <param name="Kind">The kind, in words.</param>
/// <param name="Why">The reasons, a sentence each.</param>
public sealed record PlanRespirator(string Kind, ImmutableArray<string> Why);
