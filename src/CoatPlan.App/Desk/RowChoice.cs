namespace CoatPlan.App.Desk;

/// <summary>The choice of a row among several.</summary>
internal static class RowChoice
{
    private const int OfAPage = 10;

    /// <summary>Where a word moves the choice to; it stays inside.</summary>
    /// <param name="at">The chosen row, from 0.</param>
    /// <param name="word">The word; one that moves nothing leaves the choice.</param>
    /// <param name="count">How many rows there are.</param>
    public static int Moved(int at, Word word, int count) => Inside(
        word switch
        {
            Word.Up => at - 1,
            Word.Down => at + 1,
            Word.PageUp => at - OfAPage,
            Word.PageDown => at + OfAPage,
            Word.First => 0,
            Word.Last => count - 1,
            _ => at,
        },
        count);

    /// <summary>The nearest row that is there; the first where none is.</summary>
    /// <param name="at">The row, from 0.</param>
    /// <param name="count">How many rows there are.</param>
    public static int Inside(int at, int count) => Math.Clamp(at, 0, Math.Max(0, count - 1));
}
