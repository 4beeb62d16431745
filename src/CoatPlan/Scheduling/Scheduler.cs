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
    /// <exception cref="ArgumentException">The network names something it does not contain, or has a figure outside its range.</exception>
    public static Outcome Schedule(Network network, Effort effort, Func<Schedule, long>? preference = null)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(effort);
        if (effort.Passes < 1 || effort.Nodes < 0)
        {
            throw new ArgumentException(FormattableString.Invariant(
                $"An effort must have at least 1 pass and 0 nodes, not {effort.Passes} and {effort.Nodes}."), nameof(effort));
        }

        var frame = new Frame(network);
        var heads = Heads.Of(frame);
        if (Contradiction.In(frame) is { } contradiction)
        {
            return Impossible(frame, contradiction, 0);
        }

        if (heads.Blockage is { } blockage)
        {
            return Impossible(frame, blockage, heads.Finish);
        }

        var lowerBound = Math.Max(heads.Finish, LoadBound.Of(frame, heads));
        if (lowerBound > frame.Horizon && heads.Finish <= frame.Horizon)
        {
            lowerBound = frame.Horizon + 1;
        }

        var search = new LocalSearch(frame, GenerationOrder.Of(frame), heads, preference);
        search.Run(effort.Passes, lowerBound);
        return search.Best is { } best
            ? new Outcome
            {
                Verdict = best.Finish <= lowerBound ? Verdict.Optimal : Verdict.Found,
                Schedule = best,
                LowerBound = Math.Min(lowerBound, best.Finish),
                Placed = [.. best.Placements.Select(p => (Placement?)p)],
            }
            : new Outcome { Verdict = Verdict.NotFound, LowerBound = lowerBound, Blockage = search.Blockage, Placed = search.Placed };
    }

    private static Outcome Impossible(Frame frame, Blockage blockage, int lowerBound) => new()
    {
        Verdict = Verdict.Infeasible,
        LowerBound = lowerBound,
        Blockage = blockage,
        Placed = [.. frame.Activities.Select(a => a.Fixed)],
    };
}
