namespace CoatPlan.Scheduling;

/// <summary>What a run takes of the resources over time: what work demands while it lasts, and what is held until something gives it back.</summary>
/// <param name="frame">The network at every pace.</param>
internal sealed class RepairUse(RepairFrame frame)
{
    private readonly Profile[] use = [.. frame.Capacity.Select(_ => new Profile())];

    /// <summary>Nothing is taken.</summary>
    public void Clear()
    {
        foreach (var profile in use)
        {
            profile.Clear();
        }
    }

    /// <summary>The start itself when there is enough of everything for a placement; otherwise a minute before which no later start has it, <see cref="Profile.Never"/> where
    /// that is never.</summary>
    public int FreeFrom(int activity, Placement at)
    {
        var free = at.Start;
        foreach (var demand in frame.Demands[activity])
        {
            free = Math.Max(free, use[demand.Resource].FreeFrom(at.Start, at.End, demand.Amount, frame.Capacity[demand.Resource]));
        }

        foreach (var hold in frame.HoldsFrom[activity])
        {
            free = Math.Max(free, use[hold.Resource].FreeFrom(at.Start, Profile.Never, hold.Amount, frame.Capacity[hold.Resource]));
        }

        return free;
    }

    /// <summary>Takes what an activity demands while it lasts.</summary>
    public void Add(int activity, Placement at) => Change(activity, at, 1);

    /// <summary>Undoes <see cref="Add"/>.</summary>
    public void Remove(int activity, Placement at) => Change(activity, at, -1);

    /// <summary>Takes what an activity holds, until something gives it back.</summary>
    public void Hold(int activity, int from)
    {
        foreach (var hold in frame.HoldsFrom[activity])
        {
            use[hold.Resource].Add(from, Profile.Never, hold.Amount);
        }
    }

    /// <summary>Gives back what is held.</summary>
    public void GiveBack(RepairHold hold, int at) => use[hold.Resource].Add(at, Profile.Never, -hold.Amount);

    private void Change(int activity, Placement at, int sign)
    {
        foreach (var demand in frame.Demands[activity])
        {
            use[demand.Resource].Add(at.Start, at.End, sign * demand.Amount);
        }
    }
}
