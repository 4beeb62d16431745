using CoatPlan.Climate;

namespace CoatPlan.Timetable;

/// <summary>A job arranged with the hours in which its heater is off.</summary>
/// <param name="Arranged">The job.</param>
/// <param name="Place">What its network was drawn from, the heater off in those hours.</param>
/// <param name="Offs">The hours; empty where there is no open heater.</param>
internal sealed record HeatedJob(Arranged Arranged, Workplace Place, ImmutableArray<HeaterOff> Offs);
