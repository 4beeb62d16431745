namespace CoatPlan.Scheduling;

/// <summary>What placed activities take of the resources over time: what they demand while they last, and what they hold until another gives it back.</summary>
/// <param name="frame">The network.</param>
/// <param name="placements">Where each activity is placed; changed by the owner.</param>
/// <param name="isPlaced">Whether each activity is placed; changed by the owner.</param>
internal sealed class PlacedUse(Frame frame, Placement[] placements, bool[] isPlaced)
{
    private readonly ResourceProfiles use = new(frame.Capacity);

    /// <summary>Nothing is taken.</summary>
    public void Clear() => use.Clear();

    /// <summary>The start itself when there is enough of everything for a placement; otherwise a minute before which no later start has it, <see cref="Profile.Never"/> where
    /// that waits for what is not placed yet.</summary>
    public int FreeFrom(int activity, Placement at)
    {
        var free = use.FreeFrom(frame.Demands[activity], at);
        foreach (var h in frame.HoldsFrom[activity])
        {
            var hold = frame.Holds[h];
            var end = HoldEnd(hold, activity, at);
            free = Math.Max(free, use.FreeFrom(hold.Resource, at.Start, end, AlsoHeld(hold, activity, at, end)));
            free = Math.Max(free, use.FreeFrom(hold.Resource, at.Start, at.End, hold.Amount + frame.OwnUse(activity, h)));
        }

        return free;
    }

    /// <summary>Takes what a placed activity and its holds take, and gives back what is held until it.</summary>
    public void Add(int activity) => Change(activity, 1);

    /// <summary>Undoes <see cref="Add"/>, as long as the activity still counts as placed.</summary>
    public void Remove(int activity) => Change(activity, -1);

    /// <summary>Whether an activity takes any of a resource.</summary>
    public bool Uses(int activity, int resource) =>
        Array.Exists(frame.Demands[activity], d => d.Resource == resource)
        || Array.Exists(frame.HoldsFrom[activity], h => frame.Holds[h].Resource == resource);

    private void Change(int activity, int sign)
    {
        var at = placements[activity];
        use.Add(frame.Demands[activity], at, sign);
        foreach (var h in frame.HoldsFrom[activity])
        {
            var hold = frame.Holds[h];
            use.Add(hold.Resource, at.Start, HoldEnd(hold, activity, at), sign * hold.Amount);
        }

        foreach (var h in frame.HoldsUntil[activity])
        {
            var hold = frame.Holds[h];
            if (hold.From != activity && isPlaced[hold.From])
            {
                var givenBack = Math.Max(placements[hold.From].Start, hold.GivenBackAt(at.End));
                use.Add(hold.Resource, givenBack, Profile.Never, -sign * hold.Amount);
            }
        }
    }

    // What the activity's holds on one resource keep together up to the end of one of them.
    private int AlsoHeld(FrameHold hold, int activity, Placement at, int end)
    {
        var amount = 0;
        foreach (var h in frame.HoldsFrom[activity])
        {
            var other = frame.Holds[h];
            amount += other.Resource == hold.Resource && HoldEnd(other, activity, at) >= end ? other.Amount : 0;
        }

        return amount;
    }

    private int HoldEnd(FrameHold hold, int activity, Placement at) =>
        hold.Until == activity ? hold.GivenBackAt(at.End)
        : isPlaced[hold.Until] ? Math.Max(at.Start, hold.GivenBackAt(placements[hold.Until].End))
        : Profile.Never;
}
