namespace CoatPlan.Sheets.Content;

/// <summary>How wide the columns of a table are: a figure is never broken in two, and the words share the rest by weight.</summary>
internal static class ColumnWidths
{
    // Where figures would leave the words less than this share, they are broken after all.
    private const double LeastForWords = 0.2;

    /// <summary>The widths, left to right.</summary>
    /// <param name="grid">The table.</param>
    /// <param name="room">Width of all columns together.</param>
    /// <param name="widthOf">Width of a word.</param>
    public static ImmutableArray<double> Of(Grid grid, double room, Func<string, double> widthOf)
    {
        var weighted = Weighted(grid.Columns, room);
        ImmutableArray<double> asked = [.. grid.Columns.Select((column, index) => column.IsNumber ? Math.Max(weighted[index], Longest(grid, index, widthOf)) : 0)];
        var rest = room - asked.Sum();
        var words = grid.Columns.Where(column => !column.IsNumber).Sum(column => column.Weight);
        return words == 0 || rest < LeastForWords * room
            ? weighted
            : [.. grid.Columns.Select((column, index) => column.IsNumber ? asked[index] : rest * column.Weight / words)];
    }

    private static ImmutableArray<double> Weighted(ImmutableArray<Column> columns, double room)
    {
        var all = columns.Sum(column => column.Weight);
        return [.. columns.Select(column => room * column.Weight / all)];
    }

    private static double Longest(Grid grid, int column, Func<string, double> widthOf) =>
        grid.Rows.Select(row => row[column]).Prepend(grid.Columns[column].Title).SelectMany(cell => PlainText.Of(cell).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Select(widthOf).DefaultIfEmpty(0).Max();
}
