namespace CoatPlan.Scheduling;

/// <summary>
/// Carries a schedule out under other durations and other waits: the work keeps the order that the schedule has, and each piece of it starts as early as
/// what was before it permits. What was missed is not undone: the next window is used, with what it asks for and adds, and work that has gone stale is done again.
/// </summary>
/// <remarks>
/// Saturday's second coat was planned within the hour. The first took twice as long as usual, the window closed at noon: the second goes on after 24 h, scuffed
/// and wiped again. Whoever works looks ahead as far as a person does, with the minutes of the plan: from a wipe to its coat, from a coat to those that must
/// follow it in time, and past the next piece of work where a window would close over it. One instance serves one thread; runs allocate nothing.
/// </remarks>
internal sealed class Repair
{
    /// <summary>The finish of a run in which something found no time within the horizon.</summary>
    public const int Never = int.MaxValue;

    private const int Undecided = -1;

    // A chain of coats that is looked ahead over, and how often it is tried to fit it in.
    private const int LongestChain = 8;
    private const int MostTries = 32;

    private readonly RepairFrame frame;
    private readonly RepairUse use;
    private readonly RepairSpace space;
    private readonly Placement[] placements;
    private readonly bool[] isPlaced;
    private readonly bool[] isWanted;
    private readonly int[] floors;
    private readonly int[] decided;
    private readonly int[] addedWork;
    private readonly bool[] isRedone;
    private readonly Placement[] anchors;
    private readonly int[] pending;
    private readonly int[] plannedWork;
    private readonly byte[] plannedPaces;
    private readonly int[] chain = new int[LongestChain];
    private readonly int[] lows = new int[LongestChain];
    private int pendingCount;
    private int[] work = [];
    private byte[] paces = [];

    /// <summary>A schedule to be carried out.</summary>
    /// <param name="frame">Its network at every pace.</param>
    /// <param name="floors">For each activity the minute before which it is not begun; those of <see cref="RepairFloors"/>.</param>
    public Repair(RepairFrame frame, ReadOnlySpan<int> floors)
    {
        this.frame = frame;
        this.floors = floors.ToArray();
        use = new RepairUse(frame);
        space = new RepairSpace(frame);
        placements = new Placement[frame.Count];
        isPlaced = new bool[frame.Count];
        isWanted = new bool[frame.Count];
        decided = new int[frame.Links.Length];
        addedWork = new int[frame.Count];
        isRedone = new bool[frame.Links.Length];
        anchors = new Placement[frame.Count];
        pending = new int[frame.Links.Length];
        plannedWork = [.. frame.Activities.Select(a => a.Work)];
        plannedPaces = new byte[frame.Count];
    }

    /// <summary>What the last run placed; without meaning for what <see cref="IsDone"/> denies.</summary>
    public ReadOnlySpan<Placement> Placements => placements;

    /// <summary>For each link the window that the last run used; −1 for one that said nothing.</summary>
    public ReadOnlySpan<int> Decided => decided;

    /// <summary>For each activity, the work that windows added, and what was done again for it.</summary>
    public ReadOnlySpan<int> AddedWork => addedWork;

    /// <summary>For each link, whether all its windows were missed, so that its earlier activity was done again right before the later.</summary>
    public ReadOnlySpan<bool> IsRedone => isRedone;

    /// <summary>Whether the last run did an activity.</summary>
    public bool IsDone(int activity) => isPlaced[activity];

    /// <summary>One run.</summary>
    /// <param name="minutes">For each activity its work, 0 or more; of facts it is not asked.</param>
    /// <param name="pace">For each activity the pace at which what it leaves dries.</param>
    /// <returns>The latest end of all; <see cref="Never"/> where something found no time.</returns>
    public int Run(int[] minutes, byte[] pace)
    {
        (work, paces) = (minutes, pace);
        Reset();
        foreach (var activity in frame.Order)
        {
            if (isPlaced[activity] || !Wanted(activity))
            {
                continue;
            }

            if (!CarryUrgent(activity) || (!isPlaced[activity] && !Carry(activity)))
            {
                return Never;
            }
        }

        var finish = 0;
        for (var i = 0; i < placements.Length; i++)
        {
            finish = isPlaced[i] && placements[i].End > finish ? placements[i].End : finish;
        }

        return finish;
    }

    private void Reset()
    {
        use.Clear();
        space.Clear();
        Array.Clear(isPlaced);
        Array.Clear(isWanted);
        Array.Clear(addedWork);
        Array.Clear(isRedone);
        Array.Fill(decided, Undecided);
        pendingCount = 0;
        foreach (var activity in frame.Facts)
        {
            Place(activity, frame.Activities[activity].Fixed!.Value);
        }
    }

    // An activity that a window asks for waits until that window was decided on, which its turn in the order is a reason to do.
    private bool Wanted(int activity)
    {
        var l = frame.AskedBy[activity];
        if (l < 0)
        {
            return true;
        }

        if (decided[l] == Undecided && isPlaced[frame.Links[l].From])
        {
            Decide(l, Undecided);
        }

        return isWanted[activity];
    }

    private bool Carry(int activity)
    {
        foreach (var l in frame.ChoicesTo[activity])
        {
            if (decided[l] == Undecided && isPlaced[frame.Links[l].From])
            {
                Decide(l, Undecided);
            }
        }

        // Each round uses up a window of a link, so that there are no more rounds than windows.
        for (var rounds = 0; rounds <= frame.MostWindows; rounds++)
        {
            if (!CarryAsked(activity) || FirstFree(activity, Math.Max(Math.Max(floors[activity], JustInTime(activity)), Foreseen(activity))) is not { } at)
            {
                return false;
            }

            if (Missed(activity, at) is not { } missed)
            {
                Place(activity, at);
                return true;
            }

            Decide(missed, decided[missed]);
        }

        return false;
    }

    // What the windows in use ask for and is not done yet is done before what they lead to.
    private bool CarryAsked(int activity)
    {
        foreach (var l in frame.ChoicesTo[activity])
        {
            if (decided[l] < 0)
            {
                continue;
            }

            foreach (var asked in frame.Links[l].Asks[decided[l]])
            {
                if (isPlaced[asked])
                {
                    continue;
                }

                if (FirstFree(asked, Math.Max(floors[asked], JustInTime(asked))) is not { } at)
                {
                    return false;
                }

                Place(asked, at);
            }
        }

        return true;
    }

    // What has a window that going on with the next piece of work would close is done first.
    private bool CarryUrgent(int next)
    {
        for (var p = 0; p < pendingCount; p++)
        {
            var l = pending[p];
            var link = frame.Links[l];
            if (isPlaced[link.To])
            {
                pending[p--] = pending[--pendingCount];
                continue;
            }

            if (link.To != next && IsReady(link.To) && Speaks(link) && WouldClose(l, next))
            {
                if (!Carry(link.To))
                {
                    return false;
                }

                p = -1;
            }
        }

        return true;
    }

    private bool WouldClose(int l, int next)
    {
        var to = frame.Links[l].To;
        var closes = ClosesAt(l, WindowOf(l));
        if (closes == Never)
        {
            return false;
        }

        var (earliest, added) = Awaited(to, floors[to]);
        if (Search(to, earliest, added) is not { } before || before.Start > closes || FirstFree(next, floors[next]) is not { } at || at.Start >= before.End)
        {
            return false;
        }

        use.Add(next, at);
        space.Add(next, at, paces[next]);
        var after = Search(to, before.Start, added);
        space.TakeBack(next);
        use.Remove(next, at);
        return after is not { } later || later.Start > closes;
    }

    private bool IsReady(int activity)
    {
        foreach (var l in frame.Incoming[activity])
        {
            var from = frame.Links[l].From;
            if (!isPlaced[from] && (frame.AskedBy[from] < 0 || isWanted[from]))
            {
                return false;
            }
        }

        return true;
    }

    // The start of a coat from which, with the minutes of the plan, each coat that must follow it in time can; 0 where none is found or none must.
    private int Foreseen(int activity)
    {
        if (frame.ChainNext[activity] < 0)
        {
            return 0;
        }

        var (luckyWork, luckyPaces) = (work, paces);
        (work, paces) = (plannedWork, plannedPaces);
        var start = Chained(activity);
        (work, paces) = (luckyWork, luckyPaces);
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
            lows[i] = floors[chain[i]];
        }

        var (at, fits) = (0, true);
        for (var tries = 0; at < length && fits; tries++)
        {
            if (tries == MostTries || FirstFree(chain[at], lows[at]) is not { } placement)
            {
                fits = false;
            }
            else if (at > 0 && placement.Start - ClosesAt(frame.ChainNext[chain[at - 1]], frame.Links[frame.ChainNext[chain[at - 1]]].Planned) is > 0 and var late)
            {
                at--;
                isPlaced[chain[at]] = false;
                lows[at] = placements[chain[at]].Start + late;
            }
            else
            {
                placements[chain[at]] = anchors[chain[at]] = placement;
                isPlaced[chain[at]] = true;
                at++;
            }
        }

        var start = fits ? placements[first].Start : 0;
        for (var i = 0; i < at; i++)
        {
            isPlaced[chain[i]] = false;
        }

        return start;
    }

    // The planned window where it can still be met, else of the others the one that lets the later activity start first; after a miss, only those behind it.
    private void Decide(int l, int missed)
    {
        var link = frame.Links[l];
        var best = Undecided;
        var bestStart = Never;
        var bestIsFresh = false;
        for (var k = missed + 1; k < link.Windows; k++)
        {
            var (start, isFresh) = StartIn(l, k);
            if (start != Never && (isFresh, -start).CompareTo((bestIsFresh, -bestStart)) > 0)
            {
                (best, bestStart, bestIsFresh) = (k, start, isFresh);
            }

            if (k == link.Planned && start != Never && isFresh)
            {
                best = k;
                break;
            }
        }

        // Where none can be met, the last of them is used late: what it is counted from is done again.
        decided[l] = best >= 0 ? best : link.Windows - 1;
        foreach (var asked in link.Asked)
        {
            isWanted[asked] = Array.IndexOf(link.Asks[decided[l]], asked) >= 0;
        }
    }

    // The start in a window, and whether nothing else that the later activity follows has gone stale by then.
    private (int Start, bool IsFresh) StartIn(int l, int k)
    {
        var link = frame.Links[l];
        var earliest = Math.Max(floors[link.To], link.Least[paces[link.From]][k].After(placements[link.From]));
        foreach (var asked in link.Asks[k])
        {
            earliest += isPlaced[asked] ? 0 : work[asked];
        }

        return FirstFree(link.To, earliest, l) is { } at && at.Start <= ClosesAt(l, k) ? (at.Start, IsFresh(link, k, at.Start, l)) : (Never, false);
    }

    private bool IsFresh(RepairLink link, int window, int start, int without)
    {
        foreach (var l in frame.ClosingTo[link.To])
        {
            var other = frame.Links[l];
            if (l == without || !isPlaced[other.From] || start <= ClosesAt(l, WindowOf(l)) || Array.IndexOf(link.Asked, other.From) >= 0)
            {
                continue;
            }

            var isSilenced = false;
            foreach (var silencer in other.Unless)
            {
                isSilenced |= isPlaced[silencer] || Array.IndexOf(link.Asks[window], silencer) >= 0;
            }

            if (!isSilenced)
            {
                return false;
            }
        }

        return true;
    }

    // The first link with another window left that the placement would miss; one without is missed for good, and what it is counted from done again.
    private int? Missed(int activity, Placement at)
    {
        foreach (var l in frame.ChoicesTo[activity])
        {
            if (decided[l] >= 0 && decided[l] + 1 < frame.Links[l].Windows && Speaks(frame.Links[l]) && at.Start > ClosesAt(l, decided[l]))
            {
                return l;
            }
        }

        return null;
    }

    private int ClosesAt(int l, int window)
    {
        var link = frame.Links[l];
        return link.Most[paces[link.From]][window] is { } most ? most.After(anchors[link.From]) : Never;
    }

    private int WindowOf(int l) => decided[l] >= 0 ? decided[l] : frame.Links[l].Planned;

    private bool Speaks(RepairLink link)
    {
        if (!isPlaced[link.From])
        {
            return false;
        }

        foreach (var silencer in link.Unless)
        {
            if (isPlaced[silencer] || isWanted[silencer])
            {
                return false;
            }
        }

        return true;
    }

    // A wipe is not done before the coat it is meant for can follow in time, as far as anybody can see who holds the cloth.
    private int JustInTime(int activity)
    {
        var earliest = 0;
        foreach (var l in frame.TightFrom[activity])
        {
            var link = frame.Links[l];
            if (isPlaced[link.To] || !Wanted(link.To))
            {
                continue;
            }

            var most = link.Most[paces[activity]][0]!.Value;
            if (FirstFree(link.To, floors[link.To]) is { } at)
            {
                earliest = Math.Max(earliest, at.Start - most.Constant!.Value - (most.IsFromStart ? 0 : work[activity]));
            }
        }

        return earliest;
    }

    // The first placement from a minute on that what is placed permits; a link that shall not be looked at may be named.
    private Placement? FirstFree(int activity, int from, int without = -1)
    {
        var (earliest, added) = Awaited(activity, from, without);
        return Search(activity, earliest, added, without);
    }

    // What the links to an activity make it wait for, and the work that their windows add.
    private (int Earliest, int Added) Awaited(int activity, int from, int without = -1)
    {
        var earliest = Math.Max(from, frame.Activities[activity].Release);
        var added = 0;
        foreach (var l in frame.Incoming[activity])
        {
            var link = frame.Links[l];
            if (l == without || !Speaks(link))
            {
                continue;
            }

            var window = WindowOf(l);
            earliest = Math.Max(earliest, link.Least[paces[link.From]][window].After(placements[link.From]));
            added += link.AddedWork[window];
        }

        return (earliest, added);
    }

    // The first placement of an activity whose waits are over.
    private Placement? Search(int activity, int earliest, int added, int without = -1)
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
                var permitted = rule.At(t);
                if (permitted == Never)
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

            var free = Math.Max(use.FreeFrom(activity, at), space.ClearFrom(activity, at, paces[activity]));
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
            var window = WindowOf(l);
            if (l == without || window < link.Windows - 1 || !Speaks(link) || start <= ClosesAt(l, window))
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
        var minutes = work[activity] + added;
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

    private void Place(int activity, Placement at)
    {
        foreach (var l in frame.Incoming[activity])
        {
            Settle(l, activity, at);
        }

        placements[activity] = anchors[activity] = at;
        isPlaced[activity] = true;
        use.Add(activity, at);
        foreach (var l in frame.ClosingFrom[activity])
        {
            pending[pendingCount++] = l;
        }

        use.Hold(activity, at.Start);
        foreach (var hold in frame.HoldsUntil[activity])
        {
            if (isPlaced[hold.From])
            {
                use.GiveBack(hold, Math.Max(placements[hold.From].Start, hold.GivenBackAt(paces[activity], at.End)));
            }
        }

        space.Add(activity, at, paces[activity]);
    }

    private void Settle(int l, int activity, Placement at)
    {
        var link = frame.Links[l];
        if (!Speaks(link))
        {
            decided[l] = Undecided;
            return;
        }

        if (frame.IsFact[activity])
        {
            decided[l] = link.Planned;
            return;
        }

        decided[l] = WindowOf(l);
        addedWork[activity] += link.AddedWork[decided[l]];
        if (at.Start > ClosesAt(l, decided[l]))
        {
            // Done again right before: what else is counted from it counts from then.
            isRedone[l] = true;
            addedWork[activity] += Math.Max(0, frame.Redo[link.From]);
            anchors[link.From] = new Placement(at.Start, at.Start + Math.Max(0, frame.Redo[link.From]));
        }
    }
}
