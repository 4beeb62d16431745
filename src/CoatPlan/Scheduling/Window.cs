namespace CoatPlan.Scheduling;

/// <summary>When a later activity may start, seen from an earlier one: not before the least wait, not after the most.</summary>
/// <remarks>"Recoat within an hour or after 24 hours" is two windows: from 10 minutes after the end to one hour after the start, and from 24 hours on.</remarks>
/// <param name="Least">The earliest start.</param>
/// <param name="Most">The latest start, itself permitted; null when the window never closes.</param>
public sealed record Window(Wait Least, Wait? Most = null)
{
    /// <summary>Minutes of work that using this window adds to the later activity, 0 or more: the price of a missed earlier window.</summary>
    public int AddedWork { get; init; }

    /// <summary>Whether it is there for where no other does, the rework of a missed window: the search also looks for schedules that do without.</summary>
    public bool IsLastResort { get; init; }

    /// <summary>
    /// Ids of activities that are done only where this window is used, between the two activities of its link: a missed window's scuffing, the tape that
    /// comes off over a night. An activity that no window asks for is always done; one that a window asks for is asked for by windows of one link only.
    /// </summary>
    public ImmutableArray<string> Asks { get; init; } = [];

    /// <summary>The latest start, counted from a placement of the earlier activity; the end of time where it never closes.</summary>
    internal int LatestAfter(Placement from) => Most?.After(from) ?? int.MaxValue;
}
