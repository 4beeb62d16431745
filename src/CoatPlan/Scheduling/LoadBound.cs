namespace CoatPlan.Scheduling;

/// <summary>A minute before which the work that shares a resource cannot be done.</summary>
internal static class LoadBound
{
    /// <summary>The latest such minute of all resources, with what to say where it is past the horizon.</summary>
    public static (int Minute, Blockage? Blockage) Of(Frame frame, Heads heads)
    {
        var latest = (Minute: 0, Blockage: (Blockage?)null);
        for (var r = 0; r < frame.Capacity.Length; r++)
        {
            var bound = OfResource(frame, heads, r);
            if (bound.Minute > latest.Minute)
            {
                latest = bound;
            }
        }

        return latest;
    }

    private static (int Minute, Blockage? Blockage) OfResource(Frame frame, Heads heads, int resource)
    {
        var users = new List<(int Start, int Activity, long Load, OpenHours? Hours)>();
        for (var i = 0; i < frame.Count; i++)
        {
            foreach (var demand in frame.Demands[i])
            {
                if (demand.Resource == resource && frame.Work[i] > 0 && !frame.IsFixed[i] && frame.AskedBy[i] < 0)
                {
                    users.Add((heads[i].Start, i, (long)frame.Work[i] * demand.Amount, frame.Activities[i].Hours));
                }
            }
        }

        users.Sort((a, b) => b.Start.CompareTo(a.Start));

        // Whoever starts at or after a head needs its load after that head, in hours that at least one of them may work in.
        var together = users.Exists(u => u.Hours is null) ? null : OpenHours.Of(users.Select(u => u.Hours!).Distinct().SelectMany(h => h.Openings));
        var load = 0L;
        var bound = (Minute: 0, Blockage: (Blockage?)null);
        foreach (var (start, activity, own, _) in users)
        {
            load += own;
            var minutes = (int)Math.Min(frame.Horizon + 1, (load + frame.Capacity[resource] - 1) / frame.Capacity[resource]);
            var end = together is null ? start + minutes : together.NextFit(start, minutes, breakable: true)?.End ?? frame.Horizon + 1;
            if (end > bound.Minute)
            {
                var reason = new Reason(ReasonKind.Resource) { Resource = frame.ResourceName(resource) };
                bound = (end, new Blockage(frame.IdOf(activity), reason, start, frame.Horizon));
            }
        }

        return bound;
    }
}
