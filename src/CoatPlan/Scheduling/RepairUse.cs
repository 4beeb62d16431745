namespace CoatPlan.Scheduling;

/// <summary>What a run takes of the resources over time: what work demands while it lasts, and what is held until something gives it back.</summary>
/// <param name="frame">The network at every pace.</param>
internal sealed class RepairUse(RepairFrame frame)
{
    private readonly ResourceProfiles use = new(frame.Capacity);

    /// <summary>Nothing is taken.</summary>
    public void Clear() => use.Clear();

    /// <summary>The start itself when there is enough of everything for a placement; otherwise a minute before which no later start has it, <see cref="Profile.Never"/> where
    /// that is never.</summary>
    public int FreeFrom(int activity, Placement at)
    {
        var free = use.FreeFrom(frame.Demands[activity], at);
        foreach (var hold in frame.HoldsFrom[activity])
        {
            free = Math.Max(free, use.FreeFrom(hold.Resource, at.Start, Profile.Never, hold.Amount));
        }

        return free;
    }

    /// <summary>Takes what an activity demands while it lasts.</summary>
    public void Add(int activity, Placement at) => use.Add(frame.Demands[activity], at, 1);

    /// <summary>Undoes <see cref="Add"/>.</summary>
    public void Remove(int activity, Placement at) => use.Add(frame.Demands[activity], at, -1);

    /// <summary>Takes what an activity holds, until something gives it back.</summary>
    public void Hold(int activity, int from)
    {
        foreach (var hold in frame.HoldsFrom[activity])
        {
            use.Add(hold.Resource, from, Profile.Never, hold.Amount);
        }
    }

    /// <summary>Gives back what is held.</summary>
    public void GiveBack(RepairHold hold, int at) => use.Add(hold.Resource, at, Profile.Never, -hold.Amount);
}
