namespace CoatPlan.Scheduling;

/// <summary>Which of its windows each link uses, and what these ask for.</summary>
/// <param name="frame">The network at every pace.</param>
/// <param name="state">How far the run has come.</param>
/// <param name="search">Looks for the time of a piece of work.</param>
internal sealed class RepairWindows(RepairFrame frame, RepairState state, RepairSearch search)
{
    /// <summary>Whether an activity is done. One that a window asks for waits until that window was decided on, which this is a reason to do.</summary>
    public bool Wanted(int activity)
    {
        var l = frame.AskedBy[activity];
        if (l < 0)
        {
            return true;
        }

        DecideWhereDue(l);
        return state.IsWanted[activity];
    }

    /// <summary>Decides on a window of a link that was not decided on, as soon as it can be: when that stands from which its windows are counted.</summary>
    public void DecideWhereDue(int l)
    {
        if (state.Decided[l] == RepairState.Undecided && state.IsPlaced[frame.Links[l].From])
        {
            Decide(l, RepairState.Undecided);
        }
    }

    /// <summary>Decides on a window of a link: the planned one where it can still be met, else of the others the one that lets the later activity start first.</summary>
    /// <param name="l">The link.</param>
    /// <param name="missed">The window that was missed, behind which the others are; <see cref="RepairState.Undecided"/> for none.</param>
    public void Decide(int l, int missed)
    {
        var link = frame.Links[l];
        var best = RepairState.Undecided;
        var bestStart = Repair.Never;
        var bestIsFresh = false;
        for (var k = missed + 1; k < link.Windows; k++)
        {
            var (start, isFresh) = StartIn(l, k);
            if (start != Repair.Never && (isFresh, -start).CompareTo((bestIsFresh, -bestStart)) > 0)
            {
                (best, bestStart, bestIsFresh) = (k, start, isFresh);
            }

            if (k == link.Planned && start != Repair.Never && isFresh)
            {
                best = k;
                break;
            }
        }

        // Where none can be met, the last of them is used late: what it is counted from is done again.
        state.Decided[l] = best >= 0 ? best : link.Windows - 1;
        foreach (var asked in link.Asked)
        {
            state.IsWanted[asked] = Array.IndexOf(link.Asks[state.Decided[l]], asked) >= 0;
        }
    }

    // The start in a window, and whether nothing else that the later activity follows has gone stale by then.
    private (int Start, bool IsFresh) StartIn(int l, int k)
    {
        var link = frame.Links[l];
        var earliest = Math.Max(state.Floors[link.To], link.Least[state.Paces[link.From]][k].After(state.Placements[link.From]));
        foreach (var asked in link.Asks[k])
        {
            earliest += state.IsPlaced[asked] ? 0 : state.Work[asked];
        }

        var closes = state.ClosesAt(l, k);
        return earliest <= closes && search.FirstFree(link.To, earliest, l) is { } at && at.Start <= closes ? (at.Start, IsFresh(link, k, at.Start, l)) : (Repair.Never, false);
    }

    private bool IsFresh(RepairLink link, int window, int start, int without)
    {
        foreach (var l in frame.ClosingTo[link.To])
        {
            var other = frame.Links[l];
            if (l == without || !state.IsPlaced[other.From] || start <= state.ClosesAt(l, state.WindowOf(l)) || Array.IndexOf(link.Asked, other.From) >= 0)
            {
                continue;
            }

            var isSilenced = false;
            foreach (var silencer in other.Unless)
            {
                isSilenced |= state.IsPlaced[silencer] || Array.IndexOf(link.Asks[window], silencer) >= 0;
            }

            if (!isSilenced)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The first link with another window left that a placement would miss; one without is missed for good, and what it is counted from done again.</summary>
    public int? Missed(int activity, Placement at)
    {
        foreach (var l in frame.ChoicesTo[activity])
        {
            if (state.Decided[l] >= 0 && state.Decided[l] + 1 < frame.Links[l].Windows && state.Speaks(frame.Links[l]) && at.Start > state.ClosesAt(l, state.Decided[l]))
            {
                return l;
            }
        }

        return null;
    }
}
