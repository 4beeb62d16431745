namespace CoatPlan.Sheets.Content;

/// <summary>A heading.</summary>
/// <param name="Text">The heading.</param>
public sealed record Heading(string Text) : Block;
