namespace CoatPlan.Scheduling;

/// <summary>
/// Which window of each choice is used while a schedule is generated, and so which activities are done. Windows are tried in the order in which
/// they would let the later activity start, seen from what is placed.
/// </summary>
internal sealed class Choices
{
    private const int Closed = int.MaxValue - 1;
    private const int Excluded = int.MaxValue;

    // Open as far as can be told: what the later activity waits for is not placed yet.
    private const int Unknown = int.MaxValue - 2;

    private readonly Frame frame;
    private readonly Heads heads;
    private readonly Placement[] placements;
    private readonly bool[] isPlaced;
    private readonly Func<int, int, Placement?> firstFree;
    private readonly int[][] byStart;
    private readonly int[] at;
    private readonly bool[] isWanted;
    private readonly bool[] isSkipped;
    private readonly int[] seenIn;
    private readonly Placement[] seen;
    private readonly int[] starts;
    private readonly int[] expected;
    private readonly bool[] isReviewed;
    private int looks;

    /// <summary>Choices of a network of which nothing is placed.</summary>
    /// <param name="frame">The network.</param>
    /// <param name="heads">Its earliest placements.</param>
    /// <param name="placements">The placements of the run.</param>
    /// <param name="isPlaced">What the run has placed.</param>
    /// <param name="firstFree">From an activity and a minute to the first placement there that nothing placed stands in the way of; its start is Never where that is not known yet.</param>
    public Choices(Frame frame, Heads heads, Placement[] placements, bool[] isPlaced, Func<int, int, Placement?> firstFree)
    {
        this.frame = frame;
        this.heads = heads;
        this.placements = placements;
        this.isPlaced = isPlaced;
        this.firstFree = firstFree;
        byStart = [.. frame.Links.Select(l => l.IsChoice ? new int[l.Windows.Length] : [])];
        at = new int[frame.Links.Length];
        expected = new int[frame.Links.Length];
        isReviewed = new bool[frame.Links.Length];
        isWanted = new bool[frame.Count];
        isSkipped = new bool[frame.Count];
        seenIn = new int[frame.Count];
        seen = new Placement[frame.Count];
        starts = new int[frame.HasChoices ? frame.Links.Max(l => l.Windows.Length) : 0];
        Clear();
    }

    /// <summary>For each activity whether it is not done; empty where all are.</summary>
    public ImmutableArray<bool> Skipped => frame.HasChoices ? [.. isSkipped] : [];

    /// <summary>Forgets every choice.</summary>
    public void Clear()
    {
        if (!frame.HasChoices)
        {
            return;
        }

        for (var i = 0; i < isWanted.Length; i++)
        {
            isWanted[i] = false;
            isSkipped[i] = false;
        }

        Array.Fill(at, -1);
    }

    /// <summary>Whether an activity is always done, or is asked for by the window in use.</summary>
    public bool IsWanted(int activity) => frame.AskedBy[activity] < 0 || isWanted[activity];

    /// <summary>Whether an activity is not done in this run.</summary>
    public bool IsSkipped(int activity) => isSkipped[activity];

    /// <summary>Takes note that an activity is not done.</summary>
    public void Skip(int activity) => isSkipped[activity] = true;

    /// <summary>Takes note that an activity is no longer placed, nor anything decided that was counted from it.</summary>
    public void Forget(int activity)
    {
        isSkipped[activity] = false;
        foreach (var l in frame.ChoicesFrom[activity])
        {
            at[l] = -1;
            Want(l, []);
        }
    }

    /// <summary>Whether a link says anything: both its activities are done, and none that would silence it is.</summary>
    public bool Speaks(int l)
    {
        var link = frame.Links[l];
        if (isSkipped[link.From] || isSkipped[link.To])
        {
            return false;
        }

        foreach (var silencer in link.Unless)
        {
            if (isPlaced[silencer] ? !isSkipped[silencer] : IsWanted(silencer))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The window in use; −1 where none has been decided on.</summary>
    public int Window(int l) => at[l] < 0 ? -1 : byStart[l][at[l]];

    /// <summary>Whether another window could be used.</summary>
    public bool HasNext(int l) => at[l] >= 0 && at[l] + 1 < byStart[l].Length && byStart[l][at[l] + 1] >= 0;

    /// <summary>Uses the next window.</summary>
    public void TakeNext(int l)
    {
        Use(l, at[l] + 1);
    }

    /// <summary>Uses the first of the windows still to be tried that asks for an activity.</summary>
    /// <returns>Whether there is one, and the choice was decided on at all.</returns>
    public bool TakeAsking(int l, int activity)
    {
        var place = PlaceAsking(l, activity);
        if (place < 0)
        {
            return false;
        }

        Use(l, place);
        return true;
    }

    /// <summary>Whether one of the windows still to be tried asks for an activity.</summary>
    public bool HasAsking(int l, int activity) => PlaceAsking(l, activity) >= 0;

    /// <summary>Puts the windows of a choice into the order in which they are tried, and uses the first.</summary>
    /// <param name="l">The link, its earlier activity placed.</param>
    /// <param name="asked">The one window to use, or as in <see cref="Candidate"/> any.</param>
    public void Decide(int l, int asked)
    {
        var link = frame.Links[l];
        // A fact cannot come later until the one window is open: then others are used too, but after it.
        var isFact = frame.IsFixed[link.From];
        var order = byStart[l];
        for (var k = 0; k < order.Length; k++)
        {
            starts[k] = isFact || link.MayUse(k, asked) ? StartIn(l, k) : Excluded;
            var place = k;
            for (; place > 0 && starts[order[place - 1]] > starts[k]; place--)
            {
                order[place] = order[place - 1];
            }

            order[place] = k;
        }

        // What is closed is not tried; where all are, the first is, and finds that what it is counted from must come later.
        for (var place = 1; place < order.Length; place++)
        {
            order[place] = starts[order[place]] >= Closed ? -1 : order[place];
        }

        if (isFact && asked >= 0 && starts[asked] < Closed)
        {
            Array.Copy(order, 0, order, 1, Array.IndexOf(order, asked));
            order[0] = asked;
        }

        expected[l] = order.Length == 1 ? Closed : starts[order[0]] >= Unknown ? -1 : starts[order[0]];
        isReviewed[l] = false;
        Use(l, 0);
    }

    /// <summary>Whether the later activity would start after the minute that was expected when its window was decided on, for the first time.</summary>
    public bool IsWorthReview(int l, int start) => at[l] >= 0 && !isReviewed[l] && start > expected[l];

    /// <summary>Decides once more.</summary>
    public void Review(int l, int asked)
    {
        Decide(l, asked);
        isReviewed[l] = true;
    }

    private int PlaceAsking(int l, int activity)
    {
        for (var place = at[l] + 1; at[l] >= 0 && place < byStart[l].Length && byStart[l][place] >= 0; place++)
        {
            if (Array.IndexOf(frame.Links[l].Asks[byStart[l][place]], activity) >= 0)
            {
                return place;
            }
        }

        return -1;
    }

    // The window at a place of the order in which they are tried.
    private void Use(int l, int place)
    {
        at[l] = place;
        Want(l, frame.Links[l].Asks[Window(l)]);
    }

    private void Want(int l, int[] wanted)
    {
        foreach (var asked in frame.Links[l].Asked)
        {
            isWanted[asked] = Array.IndexOf(wanted, asked) >= 0;
        }
    }

    // When the later activity could start if this window were used and nothing else came between.
    private int StartIn(int l, int k)
    {
        looks++;
        var link = frame.Links[l];
        foreach (var asked in link.Asks[k])
        {
            if (frame.AskedBy[asked] < 0)
            {
                continue;
            }

            if (EarliestFor(asked, -1, -1) is not { } placement || placement.Start == Profile.Never)
            {
                return Closed;
            }

            seen[asked] = placement;
            seenIn[asked] = looks;
        }

        return EarliestFor(link.To, l, k) is not { } found ? Closed
            : found.Start == Profile.Never ? Unknown
            : IsOpen(link.To, l, k, found.Start) ? found.Start
            : Closed;
    }

    private Placement? EarliestFor(int activity, int choice, int window)
    {
        var t = heads[activity].Start;
        foreach (var i in frame.Incoming[activity])
        {
            var link = frame.Links[i];
            if (i == choice)
            {
                t = Math.Max(t, link.Windows[window].Least.After(placements[link.From]));
            }
            else if (seenIn[link.From] == looks)
            {
                t = Math.Max(t, link.EarliestAfter(seen[link.From]));
            }
            else if (isPlaced[link.From] && SpeaksMeanwhile(link))
            {
                t = Math.Max(t, link.EarliestAfter(placements[link.From]));
            }
        }

        return firstFree(activity, t);
    }

    private bool IsOpen(int activity, int choice, int window, int start)
    {
        foreach (var i in frame.Incoming[activity])
        {
            var link = frame.Links[i];
            if (!link.Closes || !isPlaced[link.From] || seenIn[link.From] == looks || (i != choice && !SpeaksMeanwhile(link)))
            {
                continue;
            }

            var from = placements[link.From];
            if (start > (i == choice ? link.Windows[window].LatestAfter(from) : link.LatestAfter(from)))
            {
                return false;
            }
        }

        return true;
    }

    // As it is where the windows decided so far are used, and the one that is being looked at.
    private bool SpeaksMeanwhile(FrameLink link)
    {
        if (isSkipped[link.From])
        {
            return false;
        }

        foreach (var silencer in link.Unless)
        {
            if (frame.AskedBy[silencer] < 0 || seenIn[silencer] == looks || (isPlaced[silencer] && !isSkipped[silencer]))
            {
                return false;
            }
        }

        return true;
    }
}
