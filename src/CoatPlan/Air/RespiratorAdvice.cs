namespace CoatPlan.Air;

/// <summary>What to breathe through, and why.</summary>
/// <param name="Kind">The kind, in words; where no mask is enough it says so first.</param>
/// <param name="Why">The reasons and what goes with it, a sentence each.</param>
public sealed record RespiratorAdvice(string Kind, ImmutableArray<string> Why)
{
    /// <summary>Its assigned protection factor against vapour; null where it holds none. Source: 29 CFR 1910.134(d)(3)(i)(A) Table 1.</summary>
    public int? Factor { get; init; }

    /// <summary>When to change its cartridges; null where it has none.</summary>
    public Duration? CartridgeLife { get; init; }
}
