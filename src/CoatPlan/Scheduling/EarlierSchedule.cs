namespace CoatPlan.Scheduling;

/// <summary>A schedule of a network as it was before a change, near which another is sought.</summary>
/// <param name="Starts">For each activity of the network the minute at which it began then; null for one that did not.</param>
/// <param name="Enough">A finish with which the search is content: the earlier one, or a little later.</param>
public sealed record EarlierSchedule(ImmutableArray<int?> Starts, int Enough);
