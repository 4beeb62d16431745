using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>A link of the network with what is waited for.</summary>
/// <param name="Link">The link as the scheduling room sees it.</param>
/// <param name="Stage">What is waited for.</param>
/// <param name="LabelMinutes">For each window, the label's time at the label's own conditions; null where no label speaks.</param>
/// <param name="Gap">The gap between coats that it bounds; null for other links.</param>
/// <param name="Tape">Whether it holds the time tape stays on.</param>
internal sealed record WorkLink(Link Link, FilmStage Stage, double? LabelMinutes, int? Gap = null, bool Tape = false);
