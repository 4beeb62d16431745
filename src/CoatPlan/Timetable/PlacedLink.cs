using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>A link whose earlier side was placed.</summary>
/// <param name="Link">The link.</param>
/// <param name="From">What its earlier side stands for.</param>
/// <param name="At">When that was placed.</param>
/// <param name="Window">The window in use.</param>
internal sealed record PlacedLink(WorkLink Link, WorkNode From, Placement At, Window Window);
