namespace CoatPlan.Scheduling;

/// <summary>A stretch of time in which work may go on, from <paramref name="Opens"/> up to but not including <paramref name="Closes"/>.</summary>
/// <param name="Opens">First minute, from the network's origin.</param>
/// <param name="Closes">The minute after the last one; greater than <paramref name="Opens"/>.</param>
public readonly record struct Opening(int Opens, int Closes);
