namespace CoatPlan.Air;

/// <summary>What to breathe through, and why.</summary>
/// <param name="Kind">The kind, in words; where no mask is enough it says so first.</param>
/// <param name="Why">The reasons and what goes with it, a sentence each.</param>
public sealed record RespiratorAdvice(string Kind, ImmutableArray<string> Why);
