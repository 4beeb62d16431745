namespace CoatPlan.Sheets.Content;

/// <summary>Tags to cut out.</summary>
/// <param name="Items">The tags.</param>
public sealed record Tags(ImmutableArray<Tag> Items) : Block;
