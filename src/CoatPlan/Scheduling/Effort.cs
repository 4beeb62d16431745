namespace CoatPlan.Scheduling;

/// <summary>How long to look for a better schedule, counted in work done and never by a clock, so that every machine gives the same answer.</summary>
/// <param name="Passes">How many whole schedules may be generated, 1 or more; fewer are where the network is large or the bound is reached.</param>
/// <param name="Nodes">How many contradictions the exact search of a small network may learn from, 0 or more; fewer where each takes long.</param>
public sealed record Effort(int Passes, int Nodes)
{
    /// <summary>Which of several climbs this is, 0 or more: each goes its own way through the same network, and one may get where another does not.</summary>
    public int Climb { get; init; }

    /// <summary>One pass, no search: for drafts.</summary>
    public static Effort Draft { get; } = new(1, 0);

    /// <summary>A few passes: for answering while somebody types.</summary>
    public static Effort Quick { get; } = new(24, 0);

    /// <summary>The search that a plan is made with.</summary>
    public static Effort Standard { get; } = new(600, 12_000);
}
