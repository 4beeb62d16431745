namespace CoatPlan.Sheets.Drawing;

/// <summary>How much room a day of the timeline has from top to bottom, points.</summary>
/// <param name="Curves">Height of the curves of the air.</param>
/// <param name="CurveLine">From one name of a curve to the next.</param>
/// <param name="Pad">White above and below what stands in a lane.</param>
/// <param name="WindowRow">From one row of a lane's windows to the next.</param>
/// <param name="BetweenDays">White below the day.</param>
internal sealed record TimelineSpacing(double Curves, double CurveLine, double Pad, double WindowRow, double BetweenDays)
{
    /// <summary>Where there is room.</summary>
    public static TimelineSpacing Roomy { get; } = new(33, 10, 2, 4.5, 4);

    /// <summary>Where the whole would only just not fit on one page; nothing touches.</summary>
    public static TimelineSpacing Tight { get; } = new(23.5, 7, 0.5, 3.9, 2);
}
