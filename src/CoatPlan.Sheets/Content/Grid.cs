namespace CoatPlan.Sheets.Content;

/// <summary>A table.</summary>
/// <param name="Columns">The columns, left to right.</param>
/// <param name="Rows">The rows, a cell a column each.</param>
public sealed record Grid(ImmutableArray<Column> Columns, ImmutableArray<ImmutableArray<string>> Rows) : Block
{
    /// <summary>Whether the last row is the sum of those above it.</summary>
    public bool EndsInSum { get; init; }
}
