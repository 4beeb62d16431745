using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>A draft with its network and what the scheduling room made of it.</summary>
/// <param name="Draft">Batches and gaps.</param>
/// <param name="Drawn">The network: the whole job, or the part of it that could be placed.</param>
/// <param name="Outcome">What became of that network.</param>
/// <param name="Stopped">Where the whole job came to a stop; null where it was placed.</param>
internal sealed record Arranged(Draft Draft, WorkNetwork Drawn, Outcome Outcome, Stop? Stopped);
