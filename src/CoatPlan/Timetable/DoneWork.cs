using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>A piece of work that has been done.</summary>
/// <param name="At">When.</param>
/// <param name="HandsMinutes">Hands-on minutes, 1 or more: those it took where that was said, those that were planned where it was not.</param>
internal readonly record struct DoneWork(Placement At, int HandsMinutes);
