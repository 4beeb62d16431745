namespace CoatPlan.Scheduling;

/// <summary>A link by index.</summary>
internal sealed record FrameLink(int From, int To, Window[] Windows)
{
    /// <summary>For each window, the activities it asks for, in the order of the network.</summary>
    public int[][] Asks { get; init; } = [];

    /// <summary>All activities that windows ask for; empty for a link that is no choice.</summary>
    public int[] Asked { get; init; } = [];

    /// <summary>Activities of which none may be done where the link is to say anything.</summary>
    public int[] Unless { get; init; } = [];

    /// <summary>Whether what is done depends on the window.</summary>
    public bool IsChoice => Asked.Length > 0;

    /// <summary>Whether some window is a last resort, and some other is not.</summary>
    public bool HasLastResort { get; } = Array.Exists(Windows, w => w.IsLastResort) && !Array.TrueForAll(Windows, w => w.IsLastResort);

    /// <summary>Whether some window closes.</summary>
    public bool Closes { get; } = Array.Exists(Windows, w => w.Most is not null);

    /// <summary>Whether a start of the later activity lies in a window that is counted from a placement of the earlier.</summary>
    public static bool Holds(Window window, Placement from, int start) =>
        start >= window.Least.After(from) && (window.Most is null || start <= window.Most.After(from));

    /// <summary>The earliest start of the later activity that some window permits, counted from a placement of the earlier.</summary>
    public int EarliestAfter(Placement from)
    {
        var earliest = int.MaxValue;
        foreach (var window in Windows)
        {
            earliest = Math.Min(earliest, window.Least.After(from));
        }

        return earliest;
    }

    /// <summary>The latest start that some window permits; the end of time where one never closes.</summary>
    public int LatestAfter(Placement from)
    {
        var latest = int.MinValue;
        foreach (var window in Windows)
        {
            latest = Math.Max(latest, window.LatestAfter(from));
        }

        return latest;
    }

    /// <summary>Whether a window may be used where a candidate asks for one, for any, or for any that is no last resort.</summary>
    public bool MayUse(int window, int asked) => asked switch
    {
        Candidate.AnyWindow => true,
        Candidate.NoLastResort => !HasLastResort || !Windows[window].IsLastResort,
        _ => window == asked,
    };

    /// <summary>The first window that holds a start and adds this much work or any; −1 when none does.</summary>
    public int WindowHolding(Placement from, int start, int? addedWork = null)
    {
        for (var k = 0; k < Windows.Length; k++)
        {
            if ((addedWork is null || Windows[k].AddedWork == addedWork) && Holds(Windows[k], from, start))
            {
                return k;
            }
        }

        return -1;
    }

    /// <summary>
    /// The smallest number of minutes by which the later start follows the earlier one, when it is a constant whatever the window;
    /// null when only a function tells. Work of the earlier activity is what it takes at least.
    /// </summary>
    public int? ConstantLag(int[] work)
    {
        int? lag = null;
        foreach (var window in Windows)
        {
            if (window.Least.Moment is not null)
            {
                return null;
            }

            var here = window.Least.Minutes + (window.Least.Anchor == Anchor.End ? work[From] : 0);
            lag = lag is null ? here : Math.Min(lag.Value, here);
        }

        return lag;
    }
}
