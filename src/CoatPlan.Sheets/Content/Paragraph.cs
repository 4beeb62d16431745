namespace CoatPlan.Sheets.Content;

/// <summary>Running text.</summary>
/// <param name="Text">The text.</param>
public sealed record Paragraph(string Text) : Block;
