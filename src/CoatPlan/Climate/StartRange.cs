namespace CoatPlan.Climate;

/// <summary>Starts of a coat that are permitted, both ends included.</summary>
/// <param name="First">First permitted start, minutes from the job's start.</param>
/// <param name="Last">Last permitted start without a break.</param>
public readonly record struct StartRange(int First, int Last);
