namespace CoatPlan.Scheduling;

/// <summary>
/// The latest placements with which a schedule still finishes when it does, its windows and the order in which resources and space are shared
/// staying as they are. Lowered from the finish until nothing moves; together they are a schedule too.
/// </summary>
internal sealed class LatestStarts
{
    private readonly Scheduled scheduled;
    private readonly Frame frame;
    private readonly Placement[] latest;
    private readonly List<KeptOrder>[] kept;
    private readonly List<int>[] keptBy;

    private LatestStarts(Scheduled scheduled)
    {
        this.scheduled = scheduled;
        frame = scheduled.Frame;
        latest = [.. scheduled.Schedule.Placements];
        kept = [.. Enumerable.Range(0, frame.Count).Select(_ => new List<KeptOrder>())];
        keptBy = [.. Enumerable.Range(0, frame.Count).Select(_ => new List<int>())];
        foreach (var order in KeptOrder.Of(scheduled))
        {
            kept[order.Before].Add(order);
            keptBy[order.After].Add(order.Before);
        }
    }

    public static Placement[] Of(Scheduled scheduled)
    {
        var starts = new LatestStarts(scheduled);
        starts.Lower();
        return starts.latest;
    }

    private void Lower()
    {
        var finish = scheduled.Schedule.Finish;
        for (var i = 0; i < frame.Count; i++)
        {
            if (!frame.IsFixed[i])
            {
                latest[i] = Last(i, finish, at => at.End <= finish);
            }
        }

        // What the schedule starts last comes first, so that most need be looked at once.
        var waiting = new Queue<int>(Enumerable.Range(0, frame.Count).OrderByDescending(i => scheduled.Schedule.Placements[i].Start));
        var isWaiting = new bool[frame.Count];
        Array.Fill(isWaiting, true);
        while (waiting.TryDequeue(out var i))
        {
            isWaiting[i] = false;
            if (frame.IsFixed[i] || Permits(i, latest[i]))
            {
                continue;
            }

            latest[i] = Last(i, latest[i].Start - 1, at => Permits(i, at));
            foreach (var neighbour in Neighbours(i))
            {
                if (!isWaiting[neighbour])
                {
                    isWaiting[neighbour] = true;
                    waiting.Enqueue(neighbour);
                }
            }
        }
    }

    private IEnumerable<int> Neighbours(int activity) =>
        frame.Incoming[activity].Select(l => frame.Links[l].From)
            .Concat(frame.Outgoing[activity].Select(l => frame.Links[l].To))
            .Concat(keptBy[activity]);

    private bool Permits(int activity, Placement at)
    {
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

        foreach (var order in kept[activity])
        {
            if (order.GoneAt(at.End) > latest[order.After].Start)
            {
                return false;
            }
        }

        return true;
    }

    // The latest placement up to a start that is permitted. What is permitted stays so for every earlier start, down to the schedule's own.
    private Placement Last(int activity, int upTo, Func<Placement, bool> isPermitted)
    {
        var last = scheduled.Schedule.Placements[activity];
        var permitted = last.Start;
        var tooLate = Math.Max(permitted, upTo) + 1;
        while (tooLate - permitted > 1)
        {
            var middle = permitted + ((tooLate - permitted) / 2);
            if (frame.First(activity, middle, scheduled.AddedWork[activity]) is { } at && at.Start < tooLate && isPermitted(at))
            {
                last = at;
                permitted = Math.Max(middle, at.Start);
            }
            else
            {
                tooLate = middle;
            }
        }

        return last;
    }
}
