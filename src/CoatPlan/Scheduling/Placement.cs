namespace CoatPlan.Scheduling;

/// <summary>When an activity runs, in minutes from the network's origin.</summary>
/// <param name="Start">Its first minute.</param>
/// <param name="End">The minute after its last one, not before <paramref name="Start"/>.</param>
public readonly record struct Placement(int Start, int End);
