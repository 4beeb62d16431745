namespace CoatPlan.Scheduling;

/// <summary>A minute before which the work that shares a resource cannot be done.</summary>
internal static class LoadBound
{
    public static int Of(Frame frame, Heads heads)
    {
        var bound = 0;
        for (var r = 0; r < frame.Capacity.Length; r++)
        {
            bound = Math.Max(bound, OfResource(frame, heads, r));
        }

        return bound;
    }

    private static int OfResource(Frame frame, Heads heads, int resource)
    {
        var users = new List<(int Start, long Load, OpenHours? Hours)>();
        for (var i = 0; i < frame.Count; i++)
        {
            foreach (var demand in frame.Demands[i])
            {
                if (demand.Resource == resource && frame.Work[i] > 0 && !frame.IsFixed[i])
                {
                    users.Add((heads[i].Start, (long)frame.Work[i] * demand.Amount, frame.Activities[i].Hours));
                }
            }
        }

        users.Sort((a, b) => b.Start.CompareTo(a.Start));

        // Whoever starts at or after a head needs its load after that head, in hours that at least one of them may work in.
        var together = users.Exists(u => u.Hours is null) ? null : OpenHours.Of(users.Select(u => u.Hours!).Distinct().SelectMany(h => h.Openings));
        var load = 0L;
        var bound = 0;
        foreach (var (start, own, _) in users)
        {
            load += own;
            var minutes = (int)((load + frame.Capacity[resource] - 1) / frame.Capacity[resource]);
            var end = together is null ? start + minutes : together.NextFit(start, minutes, breakable: true)?.End ?? frame.Horizon + 1;
            bound = Math.Max(bound, end);
        }

        return bound;
    }
}
