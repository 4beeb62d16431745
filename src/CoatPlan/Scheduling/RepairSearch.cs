namespace CoatPlan.Scheduling;

/// <summary>Looks for the time of a piece of work: the first that its waits, rules and hours, the resources and the space permit beside what is placed.</summary>
/// <param name="frame">The network at every pace.</param>
/// <param name="state">How far the run has come.</param>
internal sealed class RepairSearch(RepairFrame frame, RepairState state)
{
    /// <summary>The first placement from a minute on that what is placed permits; null where there is none. A link that shall not be looked at may be named.</summary>
    public Placement? FirstFree(int activity, int from, int without = -1)
    {
        var (earliest, added) = Awaited(activity, from, without);
        return FirstFrom(activity, earliest, added, without);
    }

    /// <summary>What the links to an activity make it wait for, and the work that their windows add.</summary>
    public (int Earliest, int Added) Awaited(int activity, int from, int without = -1)
    {
        var earliest = Math.Max(from, frame.Activities[activity].Release);
        var added = 0;
        foreach (var l in frame.Incoming[activity])
        {
            var link = frame.Links[l];
            if (l == without || !state.Speaks(link))
            {
                continue;
            }

            var window = state.WindowOf(l);
            earliest = Math.Max(earliest, link.Least[state.Paces[link.From]][window].After(state.Placements[link.From]));
            added += link.AddedWork[window];
        }

        return (earliest, added);
    }

    /// <summary>The first placement of an activity whose waits are over.</summary>
    public Placement? FirstFrom(int activity, int earliest, int added, int without = -1)
    {
        var t = earliest;
        while (true)
        {
            if (t > frame.Horizon)
            {
                return null;
            }

            if (frame.NextStart[activity] is { } rule)
            {
                if (rule.From(t) is not { } permitted)
                {
                    return null;
                }

                t = Math.Max(t, permitted);
            }

            if (Redone(activity, t, without) is not { } again || Fit(activity, t, added + again) is not { } at || at.End > frame.Horizon)
            {
                return null;
            }

            if (at.Start > t)
            {
                t = at.Start;
                continue;
            }

            var free = Math.Max(state.Use.FreeFrom(activity, at), state.Space.ClearFrom(activity, at, state.Paces[activity]));
            if (free <= t)
            {
                return at;
            }

            if (free == Profile.Never)
            {
                return null;
            }

            t = free;
        }
    }

    // The work of what went stale and has no other window, to be done again right before; null where it cannot be.
    private int? Redone(int activity, int start, int without)
    {
        var again = 0;
        foreach (var l in frame.ClosingTo[activity])
        {
            var link = frame.Links[l];
            var window = state.WindowOf(l);
            if (l == without || window < link.Windows - 1 || !state.Speaks(link) || start <= state.ClosesAt(l, window))
            {
                continue;
            }

            if (frame.Redo[link.From] < 0)
            {
                return null;
            }

            again += frame.Redo[link.From];
        }

        return again;
    }

    private Placement? Fit(int activity, int start, int added)
    {
        var a = frame.Activities[activity];
        var minutes = state.Work[activity] + added;
        if (minutes == 0)
        {
            return new Placement(start, start);
        }

        if (a.Hours is null)
        {
            return new Placement(start, start + minutes);
        }

        // What the longest opening does not hold in one go is done in two.
        return a.Hours.NextFit(start, minutes, a.Breakable || minutes > frame.LongestOpening[activity]);
    }
}
