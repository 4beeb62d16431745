namespace CoatPlan.Scheduling;

/// <summary>Whether a schedule that was reasoned out, not generated, keeps the rules it was reasoned from.</summary>
internal static class Keeping
{
    public static bool KeepsAll(Frame frame, Schedule schedule)
    {
        var space = new SharedSpace(frame);
        var use = frame.Capacity.Select(_ => new Profile()).ToArray();
        foreach (var i in Enumerable.Range(0, frame.Count).OrderBy(i => frame.IsFixed[i] ? 0 : 1).ThenBy(i => schedule.Placements[i].Start))
        {
            var at = schedule.Placements[i];
            if (!frame.IsFixed[i] && (frame.First(i, at.Start) != at || space.ClearFrom(i, at) > at.Start || !IsFree(frame, schedule, use, i)))
            {
                return false;
            }

            space.Add(i, at);
            Take(frame, schedule, use, i);
        }

        return Enumerable.Range(0, frame.Links.Length).All(l => frame.IsFixed[frame.Links[l].To] || schedule.WindowInUse[l] >= 0);
    }

    private static bool IsFree(Frame frame, Schedule schedule, Profile[] use, int activity)
    {
        var at = schedule.Placements[activity];
        Take(frame, schedule, use, activity);
        var isFree = true;
        foreach (var resource in frame.Demands[activity].Select(d => d.Resource).Concat(frame.HoldsFrom[activity].Select(h => frame.Holds[h].Resource)))
        {
            isFree &= use[resource].FreeFrom(at.Start, Profile.Never, 0, frame.Capacity[resource]) == at.Start;
        }

        Take(frame, schedule, use, activity, -1);
        return isFree;
    }

    private static void Take(Frame frame, Schedule schedule, Profile[] use, int activity, int sign = 1)
    {
        var at = schedule.Placements[activity];
        foreach (var demand in frame.Demands[activity])
        {
            use[demand.Resource].Add(at.Start, at.End, sign * demand.Amount);
        }

        foreach (var h in frame.HoldsFrom[activity])
        {
            var hold = frame.Holds[h];
            use[hold.Resource].Add(at.Start, hold.GivenBackAt(schedule.Placements[hold.Until].End), sign * hold.Amount);
        }
    }
}
