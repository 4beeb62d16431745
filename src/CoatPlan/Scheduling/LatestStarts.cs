namespace CoatPlan.Scheduling;

/// <summary>
/// The latest placements with which a schedule still finishes when it does, its windows and the order in which resources and space are shared
/// staying as they are. Lowered from the finish until nothing moves; together they are a schedule too.
/// </summary>
internal sealed class LatestStarts
{
    private readonly Scheduled scheduled;
    private readonly Frame frame;
    private readonly int finish;
    private readonly Placement[] latest;
    private readonly KeptOrder[] kept;
    private readonly int[] firstKept;
    private readonly int[] keptBy;
    private readonly int[] firstKeptBy;

    private LatestStarts(Scheduled scheduled)
    {
        this.scheduled = scheduled;
        frame = scheduled.Frame;
        finish = scheduled.Schedule.Finish;
        latest = [.. scheduled.Schedule.Placements];
        var orders = KeptOrder.Of(scheduled);
        (kept, firstKept) = Grouped(orders, order => order.Before, order => order);
        (keptBy, firstKeptBy) = Grouped(orders, order => order.After, order => order.Before);
    }

    // Those of each activity side by side, and where they begin.
    private (T[] Grouped, int[] Firsts) Grouped<T>(List<KeptOrder> orders, Func<KeptOrder, int> activityOf, Func<KeptOrder, T> of)
    {
        var firsts = new int[frame.Count + 1];
        foreach (var order in orders)
        {
            firsts[activityOf(order) + 1]++;
        }

        for (var i = 0; i < frame.Count; i++)
        {
            firsts[i + 1] += firsts[i];
        }

        var grouped = new T[orders.Count];
        var next = firsts.AsSpan().ToArray();
        foreach (var order in orders)
        {
            grouped[next[activityOf(order)]++] = of(order);
        }

        return (grouped, firsts);
    }

    public static Placement[] Of(Scheduled scheduled)
    {
        var starts = new LatestStarts(scheduled);
        starts.Lower();
        return starts.latest;
    }

    private void Lower()
    {
        for (var i = 0; i < frame.Count; i++)
        {
            latest[i] = frame.IsFixed[i] ? latest[i] : new Placement(finish, finish);
        }

        // What the schedule starts last comes first, so that most need be looked at once.
        var waiting = new Queue<int>(Enumerable.Range(0, frame.Count).OrderByDescending(i => scheduled.Schedule.Placements[i].Start));
        var isWaiting = new bool[frame.Count];
        Array.Fill(isWaiting, true);
        var isLowered = new bool[frame.Count];
        while (waiting.TryDequeue(out var i))
        {
            isWaiting[i] = false;
            if (frame.IsFixed[i] || (isLowered[i] && Permits(i, latest[i])))
            {
                continue;
            }

            latest[i] = Last(i, isLowered[i] ? latest[i].Start - 1 : finish);
            isLowered[i] = true;
            foreach (var l in frame.Incoming[i])
            {
                Look(frame.Links[l].From);
            }

            foreach (var l in frame.Outgoing[i])
            {
                Look(frame.Links[l].To);
            }

            foreach (var before in keptBy.AsSpan(firstKeptBy[i]..firstKeptBy[i + 1]))
            {
                Look(before);
            }
        }

        void Look(int neighbour)
        {
            if (!isWaiting[neighbour])
            {
                isWaiting[neighbour] = true;
                waiting.Enqueue(neighbour);
            }
        }
    }

    private bool Permits(int activity, Placement at)
    {
        if (at.End > finish)
        {
            return false;
        }

        foreach (var l in frame.Outgoing[activity])
        {
            if (scheduled.InUse(l) is { } window && window.Least.After(at) > latest[frame.Links[l].To].Start)
            {
                return false;
            }
        }

        foreach (var l in frame.Incoming[activity])
        {
            if (scheduled.InUse(l)?.Most is { } most && at.Start > most.After(latest[frame.Links[l].From]))
            {
                return false;
            }
        }

        foreach (var order in kept.AsSpan(firstKept[activity]..firstKept[activity + 1]))
        {
            if (order.GoneAt(at.End) > latest[order.After].Start)
            {
                return false;
            }
        }

        return true;
    }

    // The latest placement up to a start that is permitted. What is permitted stays so for every earlier start, down to the schedule's own.
    private Placement Last(int activity, int upTo)
    {
        var last = scheduled.Schedule.Placements[activity];
        var permitted = last.Start;
        var tooLate = Math.Max(permitted, Bounded(activity, upTo)) + 1;
        // Most are as late as what follows lets them be, and that is the first place to look.
        for (var look = tooLate - 1; tooLate - permitted > 1; look = permitted + ((tooLate - permitted) / 2))
        {
            if (frame.First(activity, look, scheduled.AddedWork[activity]) is { } at && at.Start < tooLate && Permits(activity, at))
            {
                last = at;
                permitted = Math.Max(look, at.Start);
            }
            else
            {
                tooLate = look;
            }
        }

        return last;
    }

    // No later than what follows at a constant distance permits, whatever the calendar says of the work.
    private int Bounded(int activity, int upTo)
    {
        var work = frame.Work[activity] + scheduled.AddedWork[activity];
        var bound = Math.Min(upTo, finish - work);
        foreach (var l in frame.Outgoing[activity])
        {
            if (scheduled.InUse(l)?.Least is { Moment: null } least)
            {
                bound = Math.Min(bound, latest[frame.Links[l].To].Start - least.Minutes - (least.Anchor == Anchor.End ? work : 0));
            }
        }

        return bound;
    }
}
