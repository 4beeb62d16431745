namespace CoatPlan.Scheduling;

/// <summary>The answer of a search: a schedule, or what stands in its way.</summary>
public sealed record Outcome
{
    /// <summary>What is known.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>The best schedule found; null when none was.</summary>
    public Schedule? Schedule { get; init; }

    /// <summary>A minute before which no schedule finishes.</summary>
    public required int LowerBound { get; init; }

    /// <summary>What stands in the way; null when there is a schedule.</summary>
    public Blockage? Blockage { get; init; }

    /// <summary>What could be placed, in the network's order, null for the rest: the whole schedule where there is one.</summary>
    public required ImmutableArray<Placement?> Placed { get; init; }
}
