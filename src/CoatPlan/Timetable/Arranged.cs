using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>A draft with its network and what the scheduling room made of it.</summary>
internal sealed record Arranged(Draft Draft, WorkNetwork Drawn, Outcome Outcome);
