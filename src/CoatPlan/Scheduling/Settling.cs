namespace CoatPlan.Scheduling;

/// <summary>Leaves out of a network what a schedule of it does not do.</summary>
public static class Settling
{
    /// <summary>The network that a schedule settled on.</summary>
    /// <param name="network">The network of the schedule.</param>
    /// <param name="schedule">A schedule of that network.</param>
    public static SettledNetwork Of(Network network, Schedule schedule)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(schedule);

        var isDone = Enumerable.Range(0, network.Activities.Length).Select(i => schedule.Skipped.IsEmpty || !schedule.Skipped[i]).ToArray();
        var done = Enumerable.Range(0, isDone.Length).Where(i => isDone[i]).Select(i => network.Activities[i].Id).ToHashSet(StringComparer.Ordinal);
        ImmutableArray<int> activities = [.. Enumerable.Range(0, isDone.Length).Where(i => isDone[i])];
        ImmutableArray<int> links = [.. Enumerable.Range(0, network.Links.Length).Where(l => Speaks(network.Links[l], done))];
        var settled = network with
        {
            Activities = [.. activities.Select(i => network.Activities[i])],
            Links = [.. links.Select(l => WithWindow(network.Links[l], schedule.WindowInUse[l]))],
            Holds = [.. network.Holds.Where(h => done.Contains(h.FromActivity) && done.Contains(h.UntilActivity))],
        };
        var placed = new Schedule(
            [.. activities.Select(i => schedule.Placements[i])],
            [.. links.Select(l => Math.Min(0, schedule.WindowInUse[l]))]);
        return new SettledNetwork(settled, placed, activities, links);
    }

    private static bool Speaks(Link link, HashSet<string> done) =>
        done.Contains(link.From) && done.Contains(link.To) && !link.Unless.Any(done.Contains);

    // Between two facts that missed every window, the first one stands for them all.
    private static Link WithWindow(Link link, int window) =>
        link is { Unless.IsEmpty: true, Windows: [{ Asks.IsEmpty: true }] } ? link : new(link.From, link.To, [link.Windows[Math.Max(0, window)] with { Asks = [] }]);
}
