namespace CoatPlan.Scheduling;

/// <summary>A minute before which the work that shares a resource cannot be done.</summary>
internal static class LoadBound
{
    /// <summary>The latest such minute of all resources, with what to say where it is past the horizon.</summary>
    /// <param name="frame">The network.</param>
    /// <param name="heads">Its earliest placements.</param>
    /// <param name="load">For each activity, the minutes it takes of each unit; its work where empty.</param>
    public static (int Minute, Blockage? Blockage) Of(Frame frame, Heads heads, ImmutableArray<double> load = default)
    {
        var latest = (Minute: 0, Blockage: (Blockage?)null);
        for (var r = 0; r < frame.Capacity.Length; r++)
        {
            var bound = OfResource(frame, heads, r, load);
            if (bound.Minute > latest.Minute)
            {
                latest = bound;
            }
        }

        return latest;
    }

    private static (int Minute, Blockage? Blockage) OfResource(Frame frame, Heads heads, int resource, ImmutableArray<double> load)
    {
        var users = new List<(int Start, int Activity, double Load, OpenHours? Hours)>();
        for (var i = 0; i < frame.Count; i++)
        {
            foreach (var demand in frame.Demands[i])
            {
                if (demand.Resource == resource && frame.Work[i] > 0 && !frame.IsFixed[i] && frame.AskedBy[i] < 0)
                {
                    users.Add((heads[i].Start, i, (load.IsDefaultOrEmpty ? frame.Work[i] : load[i]) * demand.Amount, frame.Activities[i].Hours));
                }
            }
        }

        users.Sort((a, b) => b.Start.CompareTo(a.Start));

        // Whoever starts at or after a head needs its load after that head, in hours that at least one of them may work in.
        var together = users.Exists(u => u.Hours is null) ? null : OpenHours.Of(users.Select(u => u.Hours!).Distinct().SelectMany(h => h.Openings));
        var taken = 0.0;
        var bound = (Minute: 0, Blockage: (Blockage?)null);
        foreach (var (start, activity, own, _) in users)
        {
            taken += own;
            var minutes = (int)Math.Min(frame.Horizon + 1, Math.Ceiling((taken / frame.Capacity[resource]) - 1e-9));
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
