namespace CoatPlan.Sheets.Content;

/// <summary>Text that must not be missed, in a frame.</summary>
/// <param name="Text">The text.</param>
public sealed record Notice(string Text) : Block;
