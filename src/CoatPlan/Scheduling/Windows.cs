namespace CoatPlan.Scheduling;

/// <summary>Where windows put the activities at their two ends.</summary>
internal static class Windows
{
    /// <summary>
    /// The first start of the later activity at or after a minute that lies in a window, with the window; −1 for the window when all have closed.
    /// Of windows that give the same start, the first is taken.
    /// </summary>
    public static (int Start, int Window) NextStart(FrameLink link, Placement from, int earliest, int onlyWindow)
    {
        var start = int.MaxValue;
        var used = -1;
        for (var k = 0; k < link.Windows.Length; k++)
        {
            if (!link.MayUse(k, onlyWindow))
            {
                continue;
            }

            var here = Math.Max(earliest, link.Windows[k].Least.After(from));
            if (here < start && (link.Windows[k].Most is not { } most || here <= most.After(from)))
            {
                start = here;
                used = k;
            }
        }

        return (start, used);
    }

    /// <summary>
    /// The smallest start of the earlier activity, from a minute on, with which some window is still open at a start of the later one.
    /// A bound: the window found open may turn out not to have opened.
    /// </summary>
    public static int AnchorFor(Frame frame, FrameLink link, int earliestAnchor, int start, int onlyWindow = Candidate.AnyWindow, int addedWork = 0)
    {
        var smallest = int.MaxValue;
        for (var k = 0; k < link.Windows.Length; k++)
        {
            if (!link.MayUse(k, onlyWindow))
            {
                continue;
            }

            if (link.Windows[k].Most is not { } most)
            {
                return earliestAnchor;
            }

            smallest = Math.Min(smallest, AnchorFor(frame, link.From, most, earliestAnchor, start, addedWork));
        }

        return smallest;
    }

    private static int AnchorFor(Frame frame, int from, Wait most, int earliestAnchor, int start, int addedWork)
    {
        if (most.Moment is null && most.Anchor == Anchor.Start)
        {
            return Math.Max(earliestAnchor, start - most.Minutes);
        }

        // Doubling steps, then halving: `closed` is too early, `open` is late enough.
        if (IsOpen(earliestAnchor))
        {
            return earliestAnchor;
        }

        var closed = earliestAnchor;
        var step = 1;
        while (!IsOpen(closed + step))
        {
            closed += step;
            step = Math.Min(step * 2, NetworkChecks.LongestHorizon);
            if (closed > frame.Horizon)
            {
                return closed;
            }
        }

        var open = closed + step;
        while (open - closed > 1)
        {
            var middle = closed + ((open - closed) / 2);
            if (IsOpen(middle))
            {
                open = middle;
            }
            else
            {
                closed = middle;
            }
        }

        return open;

        // An anchor that no longer fits anywhere ends the search; the caller finds that it does not fit.
        bool IsOpen(int anchor) => frame.First(from, anchor, addedWork) is not { } placement || most.After(placement) >= start;
    }
}
