namespace CoatPlan.Timetable;

/// <summary>How the gap between two coats of a batch is passed.</summary>
/// <param name="Window">Index of the label's window that is used; without meaning where the window is missed on purpose.</param>
/// <param name="Reworked">Whether the window is missed and the label's rework done instead.</param>
/// <param name="Rested">Whether the work rests so long that the film wants a tack cloth before the next coat.</param>
/// <param name="Unmasked">Whether the tape comes off and goes on again.</param>
internal sealed record GapChoice(int Window, bool Reworked, bool Rested, bool Unmasked)
{
    /// <summary>The label's first window, without a rest.</summary>
    public static GapChoice First { get; } = new(0, false, false, false);
}
