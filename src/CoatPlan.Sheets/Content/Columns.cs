namespace CoatPlan.Sheets.Content;

/// <summary>Parts that share the rest of a page in two columns of smaller type, so that a sheet for the wall stays one page where it can.</summary>
/// <param name="Parts">The parts, read down the first column, then down the second.</param>
public sealed record Columns(ImmutableArray<Block> Parts) : Block;
