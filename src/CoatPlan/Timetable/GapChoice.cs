namespace CoatPlan.Timetable;

/// <summary>One way to pass the gap between two coats of a batch.</summary>
/// <param name="Window">Index of the label's window that is used; without meaning where the window is missed.</param>
/// <param name="Reworked">Whether the window is missed and the label's rework done instead.</param>
/// <param name="Rested">Whether dust is taken off the film again before the next coat: the work rested, or hands were on the piece.</param>
/// <param name="Unmasked">Whether the tape comes off and goes on again.</param>
internal sealed record GapChoice(int Window, bool Reworked, bool Rested, bool Unmasked);
