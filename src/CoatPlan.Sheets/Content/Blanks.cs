namespace CoatPlan.Sheets.Content;

/// <summary>Words with a line behind each to write on.</summary>
/// <param name="Labels">The words, left to right.</param>
public sealed record Blanks(ImmutableArray<string> Labels) : Block;
