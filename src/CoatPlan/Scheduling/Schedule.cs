namespace CoatPlan.Scheduling;

/// <summary>When everything runs.</summary>
/// <param name="Placements">Start and end of each activity, in the network's order.</param>
/// <param name="WindowInUse">For each link, in the network's order, which of its windows the start lies in; −1 between two facts that missed them all, and where the link says nothing.</param>
public sealed record Schedule(ImmutableArray<Placement> Placements, ImmutableArray<int> WindowInUse)
{
    /// <summary>
    /// Which activities are not done, since no window in use asks for them; their placements are a moment without meaning. Empty where all are done.
    /// </summary>
    public ImmutableArray<bool> Skipped { get; init; } = [];

    /// <summary>The latest end of all, 0 for a network without activities.</summary>
    public int Finish
    {
        get
        {
            var finish = Placements.IsEmpty ? 0 : int.MinValue;
            foreach (var placement in Placements)
            {
                finish = Math.Max(finish, placement.End);
            }

            return finish;
        }
    }
}
