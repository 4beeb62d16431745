namespace CoatPlan.Sheets.Content;

/// <summary>A list.</summary>
/// <param name="Items">The items, a sentence or two each.</param>
public sealed record Bullets(ImmutableArray<string> Items) : Block;
