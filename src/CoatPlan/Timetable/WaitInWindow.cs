using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>What is waited for where one window of a link is used.</summary>
/// <param name="Stage">The stage of the film.</param>
/// <param name="LabelMinutes">The label's time at the label's own conditions.</param>
/// <param name="OfLabel">The label's own window, without what was added so that a rest counts as one.</param>
internal sealed record WaitInWindow(FilmStage Stage, double? LabelMinutes, Window OfLabel);
