namespace CoatPlan.Scheduling;

/// <summary>Why there is no schedule, told of the activity at which generation came to a stop.</summary>
/// <param name="Activity">The id of the activity that could not be placed.</param>
/// <param name="Reason">The rule that stopped it.</param>
/// <param name="Earliest">The earliest start that its links and release would give it.</param>
/// <param name="Latest">The latest start that its links or the horizon would permit.</param>
public sealed record Blockage(string Activity, Reason Reason, int Earliest, int Latest);
