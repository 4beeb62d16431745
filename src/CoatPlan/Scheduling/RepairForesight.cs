namespace CoatPlan.Scheduling;

/// <summary>Looks ahead as far as a person does: from a wipe to its coat, from a coat to those that must follow it in time, and past the next piece of work.</summary>
/// <param name="frame">The network at every pace.</param>
/// <param name="state">How far the run has come.</param>
/// <param name="search">Looks for the time of a piece of work.</param>
/// <param name="windows">Knows which windows are in use.</param>
internal sealed class RepairForesight(RepairFrame frame, RepairState state, RepairSearch search, RepairWindows windows)
{
    // A chain of coats that is looked ahead over, and how often it is tried to fit it in.
    private const int LongestChain = 8;
    private const int MostTries = 32;

    private readonly int[] plannedWork = [.. frame.Activities.Select(a => a.Work)];
    private readonly byte[] plannedPaces = new byte[frame.Count];
    private readonly int[] chain = new int[LongestChain];
    private readonly int[] lows = new int[LongestChain];
    private Placement? nextAt;
    private bool isNextKnown;

    /// <summary>Something was placed since <see cref="WouldClose"/> was last asked, or another piece of work is next.</summary>
    public void LookAnew() => isNextKnown = false;

    /// <summary>Whether going on with another piece of work would close the window of a link that is open now; of several links asked about in turn, the work is looked for once.</summary>
    public bool WouldClose(int l, int next)
    {
        var to = frame.Links[l].To;
        var closes = state.ClosesAt(l, state.WindowOf(l));
        if (closes == Repair.Never)
        {
            return false;
        }

        var (earliest, added) = search.Awaited(to, state.Floors[to]);
        if (earliest > closes || search.FirstFrom(to, earliest, added) is not { } before || before.Start > closes || NextAt(next) is not { } at || at.Start >= before.End)
        {
            return false;
        }

        state.Use.Add(next, at);
        state.Space.Add(next, at, state.Paces[next]);
        var after = search.FirstFrom(to, before.Start, added);
        state.Space.TakeBack(next);
        state.Use.Remove(next, at);
        return after is not { } later || later.Start > closes;
    }

    private Placement? NextAt(int next)
    {
        if (!isNextKnown)
        {
            (nextAt, isNextKnown) = (search.FirstFree(next, state.Floors[next]), true);
        }

        return nextAt;
    }

    /// <summary>A wipe is not done before the coat it is meant for can follow in time, as far as anybody can see who holds the cloth: the minute before which; 0 for none.</summary>
    public int JustInTime(int activity)
    {
        var earliest = 0;
        foreach (var l in frame.TightFrom[activity])
        {
            var link = frame.Links[l];
            if (state.IsPlaced[link.To] || !windows.Wanted(link.To))
            {
                continue;
            }

            var most = link.Most[state.Paces[activity]][0]!.Value;
            if (search.FirstFree(link.To, state.Floors[link.To]) is { } at)
            {
                earliest = Math.Max(earliest, at.Start - most.Constant!.Value - (most.IsFromStart ? 0 : state.Work[activity]));
            }
        }

        return earliest;
    }

    /// <summary>The start of a coat from which, with the minutes of the plan, each coat that must follow it in time can; 0 where none is found or none must.</summary>
    public int Foreseen(int activity)
    {
        if (frame.ChainNext[activity] < 0)
        {
            return 0;
        }

        var (luckyWork, luckyPaces) = (state.Work, state.Paces);
        state.Take(plannedWork, plannedPaces);
        var start = Chained(activity);
        state.Take(luckyWork, luckyPaces);
        return start;
    }

    private int Chained(int first)
    {
        var length = 1;
        chain[0] = first;
        while (length < LongestChain && frame.ChainNext[chain[length - 1]] is >= 0 and var next)
        {
            chain[length++] = frame.Links[next].To;
        }

        for (var i = 0; i < length; i++)
        {
            lows[i] = state.Floors[chain[i]];
        }

        var (at, fits) = (0, true);
        for (var tries = 0; at < length && fits; tries++)
        {
            if (tries == MostTries || search.FirstFree(chain[at], lows[at]) is not { } placement)
            {
                fits = false;
            }
            else if (at > 0 && placement.Start - state.ClosesAt(frame.ChainNext[chain[at - 1]], frame.Links[frame.ChainNext[chain[at - 1]]].Planned) is > 0 and var late)
            {
                at--;
                state.IsPlaced[chain[at]] = false;
                lows[at] = state.Placements[chain[at]].Start + late;
            }
            else
            {
                state.Placements[chain[at]] = state.Anchors[chain[at]] = placement;
                state.IsPlaced[chain[at]] = true;
                at++;
            }
        }

        var start = fits ? state.Placements[first].Start : 0;
        for (var i = 0; i < at; i++)
        {
            state.IsPlaced[chain[i]] = false;
        }

        return start;
    }
}
