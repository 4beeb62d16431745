namespace CoatPlan.App.Screens;

/// <summary>Which rows of a long list are shown.</summary>
internal static class Scroll
{
    /// <summary>The first row shown, so that the chosen one is in the middle where the list allows it.</summary>
    /// <param name="chosen">The chosen row, from 0.</param>
    /// <param name="count">Rows in the list.</param>
    /// <param name="shown">Rows that can be shown.</param>
    public static int First(int chosen, int count, int shown) => Math.Clamp(chosen - (shown / 2), 0, Math.Max(0, count - shown));
}
