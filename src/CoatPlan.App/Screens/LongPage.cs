using CoatPlan.App.Desk;

namespace CoatPlan.App.Screens;

/// <summary>A page that may be longer than the place for it.</summary>
internal static class LongPage
{
    /// <summary>Shows the part that is being read, with a line that says how much is left, and tells the desk where the reading ends.</summary>
    /// <param name="canvas">The place for it.</param>
    /// <param name="page">The whole page.</param>
    /// <param name="rows">Rows that it has.</param>
    /// <param name="desk">The desk.</param>
    public static void Show(Canvas canvas, Canvas page, int rows, JobDesk desk)
    {
        // The line that says how much is left takes a row of its own.
        var fits = rows <= canvas.Height || canvas.Height < 2;
        var shown = fits ? canvas.Height : canvas.Height - 1;
        desk.ReadEnd = Math.Max(0, rows - shown);
        var first = Math.Clamp(desk.ReadFrom, 0, desk.ReadEnd);
        canvas.Paste(0, 0, page, first, Math.Clamp(Math.Min(page.Height, rows) - first, 0, shown));
        if (fits)
            return;

        var left = rows - first - shown;
        canvas.Field(0, canvas.Height - 1, canvas.Width, left > 0 ? $"-- {left} more, {Keys.NameOf(Word.Down)} to read on --" : "-- end --", Ink.Quiet);
    }
}
