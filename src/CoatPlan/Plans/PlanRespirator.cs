namespace CoatPlan.Plans;

/// <summary>What to breathe through, and why.</summary>
/// <param name="Kind">The kind, in words.</param>
/// <param name="Why">The reasons, a sentence each.</param>
public sealed record PlanRespirator(string Kind, ImmutableArray<string> Why)
{
    /// <summary>Its assigned protection factor against vapour; null where it holds none.</summary>
    public int? Factor { get; init; }

    /// <summary>Hours of spraying after which its cartridges are changed; null where it has none.</summary>
    public double? CartridgeH { get; init; }
}
