namespace CoatPlan.Scheduling;

/// <summary>When everything runs.</summary>
/// <param name="Placements">Start and end of each activity, in the network's order.</param>
/// <param name="WindowInUse">For each link, in the network's order, which of its windows the start lies in; −1 only between two facts that missed them all.</param>
public sealed record Schedule(ImmutableArray<Placement> Placements, ImmutableArray<int> WindowInUse)
{
    /// <summary>The latest end of all, 0 for a network without activities.</summary>
    public int Finish => Placements.IsEmpty ? 0 : Placements.Max(p => p.End);
}
