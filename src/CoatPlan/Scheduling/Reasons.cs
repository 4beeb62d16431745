namespace CoatPlan.Scheduling;

/// <summary>What keeps each activity of a schedule from starting a minute earlier, everything else staying where it is.</summary>
internal static class Reasons
{
    /// <summary>One reason for each activity; null for one that nothing keeps, and for a fact.</summary>
    public static ImmutableArray<Reason?> Of(Scheduled scheduled) =>
        [.. Enumerable.Range(0, scheduled.Frame.Count).Select(i => Of(scheduled, i))];

    private static Reason? Of(Scheduled scheduled, int activity)
    {
        var frame = scheduled.Frame;
        if (frame.IsFixed[activity])
        {
            return null;
        }

        var start = scheduled.Schedule.Placements[activity].Start;
        if (start <= frame.Activities[activity].Release)
        {
            return new Reason(ReasonKind.Release);
        }

        return OwnRule(scheduled, activity, start)
            ?? LeastWait(scheduled, activity, start)
            ?? InUse(scheduled, activity, start)
            ?? InTheWay(scheduled, activity, start)
            ?? KeptForAnother(scheduled, activity, start);
    }

    private static Reason? OwnRule(Scheduled scheduled, int activity, int start)
    {
        var frame = scheduled.Frame;
        if (frame.First(activity, start - 1, scheduled.AddedWork[activity]) is { } earlier && earlier.Start < start)
        {
            return null;
        }

        var a = frame.Activities[activity];
        return new Reason(a.NextStart is not null && a.NextStart(start - 1) != start - 1 ? ReasonKind.StartRule : ReasonKind.Hours);
    }

    private static Reason? LeastWait(Scheduled scheduled, int activity, int start)
    {
        var frame = scheduled.Frame;
        foreach (var l in frame.Incoming[activity])
        {
            var link = frame.Links[l];
            var from = scheduled.Schedule.Placements[link.From];
            if (scheduled.InUse(l) is { } window && start - 1 < window.Least.After(from))
            {
                return new Reason(ReasonKind.LeastWait) { Link = l, Window = scheduled.Schedule.WindowInUse[l], Other = frame.IdOf(link.From) };
            }
        }

        return null;
    }

    // Starting a minute earlier adds only the minute before the start, so whoever is in the way is there in that minute.
    private static Reason? InUse(Scheduled scheduled, int activity, int start)
    {
        var frame = scheduled.Frame;
        for (var r = 0; r < frame.Capacity.Length; r++)
        {
            var (wanted, taken) = (0, 0);
            foreach (var stretch in scheduled.Stretches[r])
            {
                wanted += stretch.From == activity ? stretch.Amount : 0;
                taken += IsUser(stretch) ? stretch.Amount : 0;
            }

            if (wanted > 0 && taken + wanted > frame.Capacity[r])
            {
                var blocking = scheduled.Stretches[r].Where(IsUser).OrderBy(s => s.End).ThenByDescending(s => s.Amount).ThenBy(s => s.Until).FirstOrDefault();
                return new Reason(ReasonKind.Resource)
                {
                    Resource = frame.ResourceName(r),
                    Other = blocking is null ? null : frame.IdOf(blocking.Until),
                };
            }
        }

        return null;

        bool IsUser(Scheduled.Stretch stretch) => stretch.Start < start && stretch.End >= start && stretch.From != activity;
    }

    private static Reason? InTheWay(Scheduled scheduled, int activity, int start)
    {
        var frame = scheduled.Frame;
        var own = frame.Activities[activity];
        var at = scheduled.Schedule.Placements[activity];
        if (own.Avoids.IsEmpty && own.Presences.IsEmpty)
        {
            return null;
        }

        for (var other = 0; other < frame.Count; other++)
        {
            var there = scheduled.Schedule.Placements[other];
            if (other == activity || there.Start >= start)
            {
                continue;
            }

            var theirs = frame.Activities[other];
            if ((at.End > at.Start && Meets(own, theirs, there.End, start)) || (there.End >= start && Meets(theirs, own)))
            {
                return new Reason(ReasonKind.Avoidance) { Other = frame.IdOf(other) };
            }
        }

        return null;
    }

    private static bool Meets(Activity avoiding, Activity leaving, int leavingEnd, int start)
    {
        foreach (var avoidance in avoiding.Avoids)
        {
            foreach (var presence in leaving.Presences)
            {
                if (presence.Kind == avoidance.Kind && presence.Key != avoidance.ExceptKey && Frame.GoneAt(presence, leavingEnd) >= start)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static bool Meets(Activity avoiding, Activity leaving)
    {
        foreach (var avoidance in avoiding.Avoids)
        {
            foreach (var presence in leaving.Presences)
            {
                if (presence.Kind == avoidance.Kind && presence.Key != avoidance.ExceptKey)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static Reason? KeptForAnother(Scheduled scheduled, int activity, int start)
    {
        var frame = scheduled.Frame;
        if (frame.First(activity, start - 1, scheduled.AddedWork[activity]) is not { } earlier)
        {
            return null;
        }

        foreach (var l in frame.Outgoing[activity])
        {
            var link = frame.Links[l];
            if (scheduled.InUse(l)?.Most is { } most && scheduled.Schedule.Placements[link.To].Start > most.After(earlier))
            {
                return new Reason(ReasonKind.MostWait) { Link = l, Window = scheduled.Schedule.WindowInUse[l], Other = frame.IdOf(link.To) };
            }
        }

        return null;
    }
}
