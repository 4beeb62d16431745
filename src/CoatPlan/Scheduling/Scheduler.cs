namespace CoatPlan.Scheduling;

/// <summary>Places activities in time.</summary>
public static class Scheduler
{
    /// <summary>
    /// Looks for the schedule that finishes earliest, then for the one the preference likes best, then for the smallest sum of ends.
    /// The same arguments give the same outcome on every machine.
    /// </summary>
    /// <param name="network">What is to be scheduled.</param>
    /// <param name="effort">How long to look.</param>
    /// <param name="preference">A cost by which schedules of equal finish are compared, the smaller the better: sessions, changes of colour; null for none.</param>
    /// <param name="earlier">A schedule of the network before a change, the order of which is tried first; null for none.</param>
    /// <param name="cancel">Ends a search whose answer is no longer wanted.</param>
    /// <exception cref="ArgumentException">The network names something it does not contain, or has a figure outside its range; an earlier schedule of another number of activities.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static Outcome Schedule(
        Network network, Effort effort, Func<Schedule, long>? preference = null, EarlierSchedule? earlier = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(effort);
        if (earlier is not null && earlier.Starts.Length != network.Activities.Length)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"An earlier schedule must say of each of the network's {network.Activities.Length} activities when it began, not of {earlier.Starts.Length}."), nameof(earlier));
        }

        if (effort.Passes < 1 || effort.Nodes < 0 || effort.Climb < 0)
        {
            throw new ArgumentException(FormattableString.Invariant(
                $"An effort must have at least 1 pass, 0 nodes and climb 0, not {effort.Passes}, {effort.Nodes} and {effort.Climb}."), nameof(effort));
        }

        var frame = new Frame(network);
        var order = GenerationOrder.Of(frame);
        var heads = Heads.Of(frame, order);
        if (Contradiction.In(frame) is { } contradiction)
        {
            return Impossible(frame, contradiction, 0);
        }

        if (heads.Blockage is { } blockage)
        {
            return Impossible(frame, blockage, heads.Finish);
        }

        if (LoadBound.Of(frame, heads) is var load && load.Minute > frame.Horizon && load.Blockage is { } overload)
        {
            return Impossible(frame, overload, load.Minute);
        }

        return Search.Run(frame, order, heads, Math.Max(heads.Finish, load.Minute), effort, preference, earlier, cancel);
    }

    /// <summary>A minute before which no schedule finishes; the horizon where none does.</summary>
    /// <param name="network">The network.</param>
    /// <param name="load">For each activity, the minutes of its resources that it takes, 0 or more, where that is less than its work.</param>
    /// <exception cref="ArgumentException">The network names something it does not contain, or has a figure outside its range.</exception>
    public static int EarliestFinish(Network network, ImmutableArray<double> load)
    {
        ArgumentNullException.ThrowIfNull(network);
        var frame = new Frame(network);
        var heads = Heads.Of(frame, GenerationOrder.Of(frame));
        return heads.Blockage is null ? Math.Min(network.Horizon, Math.Max(heads.Finish, LoadBound.Of(frame, heads, load).Minute)) : network.Horizon;
    }

    /// <summary>
    /// For each activity, what keeps it from starting a minute earlier while everything else stays where it is: one reason where several bind, null where
    /// nothing does, and for facts. And by how many minutes its start may move without moving the finish, when everything else only shifts: windows, and the
    /// order in which resources and the shared space change hands, stay as they are. Another order might leave more. 0 for facts.
    /// </summary>
    /// <param name="network">The network of the schedule.</param>
    /// <param name="schedule">A schedule of that network.</param>
    /// <exception cref="ArgumentException">The schedule is not one of the network.</exception>
    public static (ImmutableArray<Reason?> Reasons, ImmutableArray<int> Slack) Look(Network network, Schedule schedule)
    {
        var scheduled = new Scheduled(network, schedule);
        return (Reasons.Of(scheduled), [.. LatestStarts.Of(scheduled).Zip(schedule.Placements, (late, at) => late.Start - at.Start)]);
    }

    /// <summary>
    /// Each activity as late as its slack lets it be; together these are a schedule with the same finish.
    /// </summary>
    /// <param name="network">The network of the schedule.</param>
    /// <param name="schedule">A schedule of that network.</param>
    /// <exception cref="ArgumentException">The schedule is not one of the network.</exception>
    public static ImmutableArray<Placement> LatestPlacements(Network network, Schedule schedule) =>
        [.. LatestStarts.Of(new Scheduled(network, schedule))];

    private static Outcome Impossible(Frame frame, Blockage blockage, int lowerBound) => new()
    {
        Verdict = Verdict.Infeasible,
        LowerBound = lowerBound,
        Blockage = blockage,
        Placed = [.. frame.Activities.Select(a => a.Fixed)],
    };
}
