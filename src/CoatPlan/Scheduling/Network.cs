namespace CoatPlan.Scheduling;

/// <summary>Everything that is to be scheduled, and every rule that holds; time is counted in whole minutes from an origin.</summary>
public sealed record Network
{
    /// <summary>What is to be placed, in the order in which results list it.</summary>
    public required ImmutableArray<Activity> Activities { get; init; }

    /// <summary>What activities share.</summary>
    public ImmutableArray<Resource> Resources { get; init; } = [];

    /// <summary>Waits between activities; they may point backward in time and form cycles.</summary>
    public ImmutableArray<Link> Links { get; init; } = [];

    /// <summary>Capacity kept across several activities.</summary>
    public ImmutableArray<Hold> Holds { get; init; } = [];

    /// <summary>The minute by which everything must have ended, greater than 0.</summary>
    public required int Horizon { get; init; }
}
