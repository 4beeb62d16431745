namespace CoatPlan.Scheduling;

/// <summary>One thing to be placed in time: a coat, an hour of sanding, a milestone.</summary>
/// <remarks>An activity without work is a moment: it occupies nothing and may fall outside its hours, but obeys links, release and start rule.</remarks>
public sealed record Activity
{
    /// <summary>A name unique in the network.</summary>
    public required string Id { get; init; }

    /// <summary>Minutes of work, 0 or more.</summary>
    public int Work { get; init; }

    /// <summary>Whether the work may pause when its hours close and go on when they open again; otherwise it must fit into one opening.</summary>
    public bool Breakable { get; init; }

    /// <summary>When the work may go on; null means always.</summary>
    public OpenHours? Hours { get; init; }

    /// <summary>The first permitted start at or after a minute, or null when there is none; it binds the start only. Null means any minute.</summary>
    /// <remarks>Must answer the same minute for every question between the question and the answer, as "the next time the air is warm enough" does.</remarks>
    public Func<int, int?>? NextStart { get; init; }

    /// <summary>The earliest start, in minutes from the origin.</summary>
    public int Release { get; init; }

    /// <summary>What is occupied while the activity runs.</summary>
    public ImmutableArray<Demand> Demands { get; init; } = [];

    /// <summary>What the activity leaves in the shared space.</summary>
    public ImmutableArray<Presence> Presences { get; init; } = [];

    /// <summary>What the activity may not overlap.</summary>
    public ImmutableArray<Avoidance> Avoids { get; init; } = [];

    /// <summary>When the activity already ran, or is running: a fact that no rule is asked about; null for what is still to be placed.</summary>
    public Placement? Fixed { get; init; }
}
