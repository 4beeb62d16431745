namespace CoatPlan.Climate;

/// <summary>A time during which an open heater is off because of vapour in the air.</summary>
/// <param name="From">The first minute, from the job's start.</param>
/// <param name="Until">The minute at which the heater may burn again; null when that is not known, and it counts as never.</param>
public readonly record struct HeaterOff(int From, int? Until = null);
