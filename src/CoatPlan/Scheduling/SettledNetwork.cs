namespace CoatPlan.Scheduling;

/// <summary>A network without what a schedule of it does not do: every link has the one window in use, every activity is done.</summary>
/// <param name="Network">The network that is left.</param>
/// <param name="Schedule">The schedule of what is left.</param>
/// <param name="Activities">For each activity that is left, its index before.</param>
/// <param name="Links">For each link that is left, its index before.</param>
public sealed record SettledNetwork(Network Network, Schedule Schedule, ImmutableArray<int> Activities, ImmutableArray<int> Links);
