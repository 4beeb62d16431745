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

    private readonly RepairFrame frame;
    private readonly RepairState state;
    private readonly RepairSearch search;
    private readonly RepairWindows windows;
    private readonly RepairForesight foresight;
    private readonly int[] pending;
    private int pendingCount;

    /// <summary>A schedule to be carried out.</summary>
    /// <param name="frame">Its network at every pace.</param>
    /// <param name="floors">For each activity the minute before which it is not begun; those of <see cref="RepairFloors"/>.</param>
    public Repair(RepairFrame frame, ReadOnlySpan<int> floors)
    {
        this.frame = frame;
        state = new RepairState(frame, floors.ToArray());
        search = new RepairSearch(frame, state);
        windows = new RepairWindows(frame, state, search);
        foresight = new RepairForesight(frame, state, search, windows);
        pending = new int[frame.Links.Length];
    }

    /// <summary>What the last run placed; without meaning for what <see cref="IsDone"/> denies.</summary>
    public ReadOnlySpan<Placement> Placements => state.Placements;

    /// <summary>For each link the window that the last run used; −1 for one that said nothing.</summary>
    public ReadOnlySpan<int> Decided => state.Decided;

    /// <summary>For each activity, the work that windows added, and what was done again for it.</summary>
    public ReadOnlySpan<int> AddedWork => state.AddedWork;

    /// <summary>For each link, whether all its windows were missed, so that its earlier activity was done again right before the later.</summary>
    public ReadOnlySpan<bool> IsRedone => state.IsRedone;

    /// <summary>Whether the last run did an activity.</summary>
    public bool IsDone(int activity) => state.IsPlaced[activity];

    /// <summary>One run.</summary>
    /// <param name="minutes">For each activity its work, 0 or more; of facts it is not asked.</param>
    /// <param name="pace">For each activity the pace at which what it leaves dries.</param>
    /// <returns>The latest end of all; <see cref="Never"/> where something found no time.</returns>
    public int Run(int[] minutes, byte[] pace)
    {
        state.Take(minutes, pace);
        Reset();
        foreach (var activity in frame.Order)
        {
            if (state.IsPlaced[activity] || !windows.Wanted(activity))
            {
                continue;
            }

            if (!CarryUrgent(activity) || (!state.IsPlaced[activity] && !Carry(activity)))
            {
                return Never;
            }
        }

        var finish = 0;
        for (var i = 0; i < state.Placements.Length; i++)
        {
            finish = state.IsPlaced[i] && state.Placements[i].End > finish ? state.Placements[i].End : finish;
        }

        return finish;
    }

    private void Reset()
    {
        state.Clear();
        pendingCount = 0;
        foreach (var activity in frame.Facts)
        {
            Place(activity, frame.Activities[activity].Fixed!.Value);
        }
    }

    private bool Carry(int activity)
    {
        foreach (var l in frame.ChoicesTo[activity])
        {
            windows.DecideWhereDue(l);
        }

        // Each round uses up a window of a link, so that there are no more rounds than windows.
        for (var rounds = 0; rounds <= frame.MostWindows; rounds++)
        {
            if (!CarryAsked(activity) || search.FirstFree(activity, Math.Max(Math.Max(state.Floors[activity], foresight.JustInTime(activity)), foresight.Foreseen(activity))) is not { } at)
            {
                return false;
            }

            if (windows.Missed(activity, at) is not { } missed)
            {
                Place(activity, at);
                return true;
            }

            windows.Decide(missed, state.Decided[missed]);
        }

        return false;
    }

    // What the windows in use ask for and is not done yet is done before what they lead to.
    private bool CarryAsked(int activity)
    {
        foreach (var l in frame.ChoicesTo[activity])
        {
            if (state.Decided[l] < 0)
            {
                continue;
            }

            foreach (var asked in frame.Links[l].Asks[state.Decided[l]])
            {
                if (state.IsPlaced[asked])
                {
                    continue;
                }

                if (search.FirstFree(asked, Math.Max(state.Floors[asked], foresight.JustInTime(asked))) is not { } at)
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
        foresight.LookAnew();
        for (var p = 0; p < pendingCount; p++)
        {
            var l = pending[p];
            var link = frame.Links[l];
            if (state.IsPlaced[link.To])
            {
                pending[p--] = pending[--pendingCount];
                continue;
            }

            if (link.To != next && state.IsReady(link.To) && state.Speaks(link) && foresight.WouldClose(l, next))
            {
                if (!Carry(link.To))
                {
                    return false;
                }

                foresight.LookAnew();
                p = -1;
            }
        }

        return true;
    }

    private void Place(int activity, Placement at)
    {
        foreach (var l in frame.Incoming[activity])
        {
            Settle(l, activity, at);
        }

        state.Placements[activity] = state.Anchors[activity] = at;
        state.IsPlaced[activity] = true;
        state.Use.Add(activity, at);
        foreach (var l in frame.ClosingFrom[activity])
        {
            pending[pendingCount++] = l;
        }

        state.Use.Hold(activity, at.Start);
        foreach (var hold in frame.HoldsUntil[activity])
        {
            if (state.IsPlaced[hold.From])
            {
                state.Use.GiveBack(hold, Math.Max(state.Placements[hold.From].Start, hold.GivenBackAt(state.Paces[activity], at.End)));
            }
        }

        state.Space.Add(activity, at, state.Paces[activity]);
    }

    private void Settle(int l, int activity, Placement at)
    {
        var link = frame.Links[l];
        if (!state.Speaks(link))
        {
            state.Decided[l] = RepairState.Undecided;
            return;
        }

        if (frame.IsFact[activity])
        {
            state.Decided[l] = link.Planned;
            return;
        }

        state.Decided[l] = state.WindowOf(l);
        state.AddedWork[activity] += link.AddedWork[state.Decided[l]];
        if (at.Start > state.ClosesAt(l, state.Decided[l]))
        {
            // Done again right before: what else is counted from it counts from then.
            state.IsRedone[l] = true;
            state.AddedWork[activity] += Math.Max(0, frame.Redo[link.From]);
            state.Anchors[link.From] = new Placement(at.Start, at.Start + Math.Max(0, frame.Redo[link.From]));
        }
    }
}
