namespace CoatPlan.Timetable;

/// <summary>What is waited for where one window of a link is used.</summary>
/// <param name="Stage">The stage of the film.</param>
/// <param name="LabelMinutes">The label's time at the label's own conditions.</param>
internal sealed record WaitInWindow(FilmStage Stage, double? LabelMinutes);
