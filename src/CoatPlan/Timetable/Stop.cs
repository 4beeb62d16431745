using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>Why the whole of a job could not be placed.</summary>
/// <param name="Whole">The network of the whole job.</param>
/// <param name="Blockage">Where its placing came to a stop; null where no single step is to blame.</param>
internal sealed record Stop(WorkNetwork Whole, Blockage? Blockage);
