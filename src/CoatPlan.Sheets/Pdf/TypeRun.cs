namespace CoatPlan.Sheets.Pdf;

/// <summary>A stretch of text that one typeface has all letters of.</summary>
/// <param name="Text">The text.</param>
/// <param name="Family">The typeface's family.</param>
internal sealed record TypeRun(string Text, string Family);
