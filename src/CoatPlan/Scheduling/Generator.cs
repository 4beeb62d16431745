using System.Runtime.InteropServices;

namespace CoatPlan.Scheduling;

/// <summary>
/// Makes a schedule one activity at a time, each as early as what is placed permits. Where windows have closed, the activity they are counted
/// from is taken out again, with all that followed from it, and may only come back later.
/// </summary>
/// <remarks>
/// Source of the method: B. Franck, K. Neumann, C. Schwindt, "Truncated branch-and-bound, schedule-construction, and schedule-improvement
/// procedures for resource-constrained project scheduling", OR Spektrum 23 (2001). Extended here by calendars, start rules, either/or windows, holds and avoidances.
/// </remarks>
internal sealed class Generator
{
    // Up to this size everything that starts after an activity taken out is taken out too, so that it may close up.
    private const int RepackedCount = 300;

    private readonly Frame frame;
    private readonly GenerationOrder order;
    private readonly Heads heads;
    private readonly PlacedUse use;
    private readonly SharedSpace space;
    private readonly Placement[] placements;
    private readonly bool[] isPlaced;
    private readonly int[] floors;
    private readonly int[] missing;
    private readonly int[] windows;
    private readonly ReadyQueue ready;
    private readonly bool[] isMarked;
    private readonly Stack<int> marking = new();
    private readonly List<int> takenOut = [];
    private readonly Choices choices;

    private int[] ranks = [];
    private int[] onlyWindows = [];
    private ImmutableArray<int?>? notBefore;
    private bool urgentFirst;
    private int placedCount;
    private Blockage? blockage;

    public Generator(Frame frame, GenerationOrder order, Heads heads)
    {
        this.frame = frame;
        this.order = order;
        this.heads = heads;
        space = new SharedSpace(frame);
        placements = new Placement[frame.Count];
        isPlaced = new bool[frame.Count];
        use = new PlacedUse(frame, placements, isPlaced);
        floors = new int[frame.Count];
        missing = new int[frame.Count];
        windows = new int[frame.Links.Length];
        ready = new ReadyQueue(frame.Count);
        isMarked = new bool[frame.Count];
        choices = new Choices(frame, heads, placements, isPlaced, (activity, from) => FirstFree(activity, from, 0));
    }

    private enum Step
    {
        Placed,
        Parked,
        Unscheduled,
        Stuck,
    }

    /// <summary>Generates one schedule.</summary>
    /// <param name="from">The order in which activities are taken, and the windows that are used.</param>
    /// <param name="cutOff">The run is given up as soon as something ends after this minute.</param>
    /// <param name="urgentFirst">Whether what has a window that is closing comes before everything else.</param>
    public Generated Generate(Candidate from, int cutOff, bool urgentFirst) =>
        Run(from, cutOff, urgentFirst) ? new Generated { Schedule = ToSchedule() }
        : blockage is null ? new Generated()
        : new Generated { Blockage = blockage, Placed = Placed(), PlacedCount = placedCount };

    // Whether everything was placed.
    private bool Run(Candidate from, int cutOff, bool isUrgentFirst)
    {
        (ranks, onlyWindows, notBefore, urgentFirst) = (from.Ranks, from.Windows, from.NotBefore, isUrgentFirst);
        Reset();

        var budget = 100 + (10 * frame.Count);
        while (placedCount < frame.Count)
        {
            if (!ready.TryTake(out var activity))
            {
                blockage ??= HeldUp();
                return false;
            }

            if (isPlaced[activity] || missing[activity] > 0 || !choices.IsWanted(activity))
            {
                continue;
            }

            var step = TryPlace(activity);
            if (step == Step.Stuck)
            {
                return false;
            }

            if (step == Step.Placed && placements[activity].End > cutOff)
            {
                return false;
            }

            if (step == Step.Placed)
            {
                DecideAfter(activity);
            }

            if (step == Step.Unscheduled && --budget < 0)
            {
                blockage = new Blockage(
                    frame.IdOf(activity), new Reason(ReasonKind.Together), Math.Max(floors[activity], heads[activity].Start), frame.Horizon);
                return false;
            }
        }

        return true;
    }

    private ImmutableArray<Placement?> Placed() =>
        [.. Enumerable.Range(0, frame.Count).Select(i => isPlaced[i] && !choices.IsSkipped(i) ? placements[i] : (Placement?)null)];

    private Schedule ToSchedule()
    {
        var inUse = new int[frame.Links.Length];
        for (var l = 0; l < inUse.Length; l++)
        {
            var link = frame.Links[l];
            inUse[l] = !choices.Speaks(l) ? -1
                : link.IsChoice && choices.Window(l) >= 0 ? choices.Window(l)
                : frame.IsFixed[link.To] ? link.WindowHolding(placements[link.From], placements[link.To].Start)
                : windows[l] < 0 ? link.WindowHolding(placements[link.From], placements[link.To].Start, addedWork: 0)
                : windows[l];
        }

        return new Schedule([.. placements], ImmutableCollectionsMarshal.AsImmutableArray(inUse)) { Skipped = choices.Skipped };
    }

    private void Reset()
    {
        use.Clear();
        space.Clear();
        ready.Clear();
        Array.Clear(isPlaced);
        Array.Fill(windows, -1);
        order.Leaders.CopyTo(missing, 0);
        choices.Clear();
        blockage = null;
        placedCount = 0;
        for (var i = 0; i < frame.Count; i++)
        {
            floors[i] = EarliestStart(i);
        }

        for (var i = 0; i < frame.Count; i++)
        {
            if (frame.Activities[i].Fixed is { } fact)
            {
                Place(i, fact);
            }
        }

        for (var i = 0; i < frame.Count; i++)
        {
            if (frame.IsFixed[i])
            {
                DecideAfter(i);
            }
        }

        for (var i = 0; i < frame.Count; i++)
        {
            Enqueue(i);
        }
    }

    private int EarliestStart(int activity) => Math.Max(heads[activity].Start, notBefore?[activity] ?? 0);

    private void Enqueue(int activity)
    {
        if (missing[activity] == 0 && !isPlaced[activity] && !ready.Has(activity) && choices.IsWanted(activity))
        {
            ready.Add(activity, ranks[activity], urgentFirst && IsUrgent(activity));
        }
    }

    // Whether a window that is counted from something placed will close on it.
    private bool IsUrgent(int activity)
    {
        if (frame.AskedBy[activity] >= 0)
        {
            return true;
        }

        foreach (var l in frame.Incoming[activity])
        {
            if (frame.Links[l].Closes && isPlaced[frame.Links[l].From] && choices.Speaks(l))
            {
                return true;
            }
        }

        return false;
    }

    // What windows ask for is known once the activity stands from which they are counted.
    private void DecideAfter(int activity)
    {
        foreach (var l in frame.ChoicesFrom[activity])
        {
            if (!isPlaced[frame.Links[l].To])
            {
                choices.Decide(l, onlyWindows[l]);
                Follow(l);
            }
        }
    }

    private void Follow(int l)
    {
        foreach (var asked in frame.Links[l].Asked)
        {
            if (frame.AskedBy[asked] != l)
            {
                continue;
            }

            floors[asked] = EarliestStart(asked);
            if (choices.IsWanted(asked))
            {
                Enqueue(asked);
            }
            else
            {
                var at = placements[frame.Links[l].From].End;
                choices.Skip(asked);
                placements[asked] = new Placement(at, at);
                isPlaced[asked] = true;
                placedCount++;
                ReleaseFollowers(asked);
            }
        }
    }

    // The next of the windows of a choice that could be used; what the one before asked for is taken out again.
    private bool TakeNextWindow(int activity)
    {
        var l = frame.AskedBy[activity] >= 0 ? frame.AskedBy[activity] : ChoiceTo(activity);
        if (l < 0 || !choices.HasNext(l))
        {
            return false;
        }

        MarkAsked(l);
        TakeOutMarked();
        choices.TakeNext(l);
        Follow(l);
        Enqueue(activity);
        Enqueue(frame.Links[l].To);
        return true;
    }

    // Things may have come between since a window was decided on: then all are looked at once more before it is used.
    private bool DecidedAnew(int activity, int start)
    {
        var l = frame.HasChoices ? ChoiceTo(activity) : -1;
        if (l < 0 || !choices.IsWorthReview(l, start))
        {
            return false;
        }

        MarkAsked(l);
        TakeOutMarked();
        choices.Review(l, onlyWindows[l]);
        Follow(l);
        Enqueue(activity);
        return true;
    }

    private int ChoiceTo(int activity)
    {
        foreach (var l in frame.Incoming[activity])
        {
            if (frame.Links[l].IsChoice && isPlaced[frame.Links[l].From])
            {
                return l;
            }
        }

        return -1;
    }

    private Step TryPlace(int activity)
    {
        var t = floors[activity];
        while (true)
        {
            var fromT = t;
            var addedWork = 0;
            foreach (var l in frame.Incoming[activity])
            {
                var link = frame.Links[l];
                if (!isPlaced[link.From] || !choices.Speaks(l))
                {
                    windows[l] = -1;
                    continue;
                }

                var (start, window) = Windows.NextStart(link, placements[link.From], t, link.IsChoice ? choices.Window(l) : onlyWindows[l]);
                if (window < 0)
                {
                    return Closed(activity, l, t);
                }

                t = start;
                windows[l] = window;
                addedWork += link.Windows[window].AddedWork;
            }

            if (t > fromT)
            {
                continue;
            }

            if (FirstFree(activity, t, addedWork) is not { } at)
            {
                return TakeNextWindow(activity) ? Step.Unscheduled : Stuck(Explain.NeverFits(frame, activity, t, addedWork));
            }

            if (at.Start == Profile.Never)
            {
                ready.Park(activity);
                return Step.Parked;
            }

            if (at.Start > t)
            {
                t = at.Start;
                continue;
            }

            if (Behind(activity, at) is not { } behind)
            {
                if (DecidedAnew(activity, at.Start))
                {
                    return Step.Unscheduled;
                }

                Place(activity, at);
                return Step.Placed;
            }

            var later = LaterFor(behind, at);
            if (later <= t)
            {
                return PushFollower(activity, behind, at);
            }

            t = later;
        }
    }

    // The first placement that the activity's own rules, resources and the space permit; its start is Never where that waits for what is not placed yet.
    private Placement? FirstFree(int activity, int from, int addedWork)
    {
        for (var t = from; frame.First(activity, t, addedWork) is { } at;)
        {
            t = Math.Max(use.FreeFrom(activity, at), space.ClearFrom(activity, at));
            if (t == at.Start)
            {
                return at;
            }

            if (t == Profile.Never)
            {
                return new Placement(Profile.Never, Profile.Never);
            }
        }

        return null;
    }

    // A window has closed: another one is used, or what it is counted from comes later.
    private Step Closed(int activity, int l, int t)
    {
        var isAsked = frame.AskedBy[frame.Links[l].From] >= 0;
        return (!isAsked && TakeNextWindow(activity)) || DecidedAnew(activity, t) ? Step.Unscheduled : PushAnchor(activity, l, t);
    }

    // A link to something already placed whose windows the placement would not meet.
    private int? Behind(int activity, Placement at)
    {
        foreach (var l in frame.Outgoing[activity])
        {
            var link = frame.Links[l];
            if (isPlaced[link.To] && !frame.IsFixed[link.To] && choices.Speaks(l) && link.WindowHolding(at, placements[link.To].Start, addedWork: 0) < 0)
            {
                return l;
            }
        }

        return null;
    }

    private int LaterFor(int l, Placement at)
    {
        var link = frame.Links[l];
        var start = placements[link.To].Start;
        var closed = Array.Exists(link.Windows, w => w.Most is { } most && most.After(at) < start);
        return closed ? Windows.AnchorFor(frame, link, at.Start, start, onlyWindows[l]) : at.Start;
    }

    private void Place(int activity, Placement at)
    {
        placements[activity] = at;
        isPlaced[activity] = true;
        placedCount++;
        use.Add(activity);
        space.Add(activity, at);
        ReleaseFollowers(activity);
        if (frame.HoldsUntil[activity].Length > 0)
        {
            Unpark();
        }
    }

    private void ReleaseFollowers(int activity)
    {
        foreach (var follower in order.Followers[activity])
        {
            missing[follower]--;
            Enqueue(follower);
        }
    }

    private void Unpark()
    {
        foreach (var activity in ready.Unpark())
        {
            Enqueue(activity);
        }
    }

    private Step PushAnchor(int activity, int l, int start)
    {
        var link = frame.Links[l];
        var anchor = link.From;
        var why = Explain.MissedWindow(frame, activity, l, start);
        if (frame.IsFixed[anchor])
        {
            return Silence(l) ? Step.Unscheduled : Stuck(why);
        }

        var addedWork = frame.Incoming[anchor].Where(i => windows[i] >= 0).Sum(i => frame.Links[i].Windows[windows[i]].AddedWork);
        var needed = Windows.AnchorFor(frame, link, placements[anchor].Start + 1, start, onlyWindows[l], addedWork);
        return Push(activity, anchor, needed, why);
    }

    // A fact cannot come later, but a window of an earlier choice may ask for what silences the link that is counted from it.
    private bool Silence(int l)
    {
        var silencers = frame.Links[l].Unless;
        for (var s = silencers.Length - 1; s >= 0; s--)
        {
            var choice = frame.AskedBy[silencers[s]];
            if (choice < 0 || !choices.HasAsking(choice, silencers[s]))
            {
                continue;
            }

            MarkAsked(choice);
            Mark(frame.Links[choice].To);
            TakeOutMarked();
            // What was taken out may reach back to where the choice is made; then it is made anew.
            if (choices.TakeAsking(choice, silencers[s]))
            {
                Follow(choice);
            }

            Enqueue(frame.Links[choice].To);
            return true;
        }

        return false;
    }

    private Step PushFollower(int activity, int l, Placement at)
    {
        var link = frame.Links[l];
        var reason = new Reason(ReasonKind.LeastWait) { Link = l, Other = frame.IdOf(link.To) };
        return Push(activity, link.To, link.EarliestAfter(at), new Blockage(frame.IdOf(activity), reason, at.Start, frame.Horizon));
    }

    private Step Push(int activity, int other, int needed, Blockage why)
    {
        if (frame.First(other, Math.Max(needed, placements[other].Start + 1)) is not { } later)
        {
            return Stuck(why);
        }

        floors[other] = later.Start;
        TakeOut(other);
        Enqueue(activity);
        return Step.Unscheduled;
    }

    private void TakeOut(int first)
    {
        var from = placements[first].Start;
        Mark(first);
        if (frame.Count <= RepackedCount && !frame.HasChoices)
        {
            for (var i = 0; i < frame.Count; i++)
            {
                if (isPlaced[i] && placements[i].Start > from)
                {
                    Mark(i);
                }
            }
        }

        TakeOutMarked();
    }

    private void TakeOutMarked()
    {
        takenOut.Clear();
        while (marking.TryPop(out var activity))
        {
            takenOut.Add(activity);
            isMarked[activity] = false;
            MarkWhatFollowed(activity);
            if (!choices.IsSkipped(activity))
            {
                use.Remove(activity);
                space.Remove(activity, placements[activity]);
            }

            choices.Forget(activity);
            isPlaced[activity] = false;
            placedCount--;
            foreach (var follower in order.Followers[activity])
            {
                missing[follower]++;
            }
        }

        Unpark();
        foreach (var activity in takenOut)
        {
            Enqueue(activity);
        }
    }

    private void Mark(int activity)
    {
        // What is not done is not done again for another reason than its own choice.
        if (!choices.IsSkipped(activity))
        {
            MarkAnyway(activity);
        }
    }

    private void MarkAnyway(int activity)
    {
        if (isPlaced[activity] && !isMarked[activity] && !frame.IsFixed[activity])
        {
            isMarked[activity] = true;
            marking.Push(activity);
        }
    }

    private void MarkAsked(int l)
    {
        foreach (var asked in frame.Links[l].Asked)
        {
            if (frame.AskedBy[asked] == l)
            {
                MarkAnyway(asked);
            }
        }
    }

    private void MarkWhatFollowed(int activity)
    {
        foreach (var follower in order.Followers[activity])
        {
            Mark(follower);
        }

        foreach (var l in frame.ChoicesFrom[activity])
        {
            MarkAsked(l);
        }

        // A hold that opens again reaches into what others took after it had been given back.
        foreach (var h in frame.HoldsUntil[activity])
        {
            var hold = frame.Holds[h];
            if (!isPlaced[hold.From] || hold.From == activity)
            {
                continue;
            }

            var givenBack = hold.GivenBackAt(placements[activity].End);
            for (var i = 0; i < frame.Count; i++)
            {
                if (i != activity && isPlaced[i] && placements[i].End > givenBack && use.Uses(i, hold.Resource))
                {
                    Mark(i);
                }
            }
        }
    }

    private Step Stuck(Blockage why)
    {
        blockage = why;
        return Step.Stuck;
    }

    private Blockage HeldUp()
    {
        var activity = ready.FirstParked ?? 0;
        var hold = frame.Holds.FirstOrDefault(h => isPlaced[h.From] && !isPlaced[h.Until] && use.Uses(activity, h.Resource));
        var reason = hold is null
            ? new Reason(ReasonKind.Together)
            : new Reason(ReasonKind.Resource) { Resource = frame.ResourceName(hold.Resource), Other = frame.IdOf(hold.From) };
        return new Blockage(frame.IdOf(activity), reason, floors[activity], frame.Horizon);
    }
}
