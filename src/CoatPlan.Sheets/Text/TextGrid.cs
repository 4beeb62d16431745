using System.Text;
using CoatPlan.Sheets.Content;

namespace CoatPlan.Sheets.Text;

/// <summary>A table as plain text: columns as wide as their weights and their figures ask, cells wrapped.</summary>
internal static class TextGrid
{
    private const string Between = "  ";

    private const int Least = 4;

    public static void Write(StringBuilder text, Grid grid)
    {
        var widths = Widths(grid);
        Row(text, grid, [.. grid.Columns.Select(column => column.Title)], widths);
        Row(text, grid, [.. widths.Select(width => new string('-', width))], widths);
        for (var row = 0; row < grid.Rows.Length; row++)
        {
            if (grid.EndsInSum && row == grid.Rows.Length - 1)
                Row(text, grid, [.. widths.Select(width => new string('-', width))], widths);
            Row(text, grid, grid.Rows[row], widths);
        }
    }

    private static int[] Widths(Grid grid)
    {
        var room = TextSheet.Width - Between.Length * (grid.Columns.Length - 1);
        return [.. ColumnWidths.Of(grid, room, word => Wrapping.Length(word)).Select(width => Math.Max(Least, (int)width))];
    }

    private static void Row(StringBuilder text, Grid grid, ImmutableArray<string> cells, int[] widths)
    {
        var lines = cells.Select((cell, index) => Wrapping.Lines(cell, widths[index]).ToArray()).ToArray();
        for (var line = 0; line < lines.Max(cell => cell.Length); line++)
        {
            var row = string.Join(Between, lines.Select((cell, index) => Cell(line < cell.Length ? cell[line] : "", widths[index], grid.Columns[index].IsNumber)));
            text.Append(row.TrimEnd()).Append('\n');
        }
    }

    private static string Cell(string text, int width, bool toTheRight)
    {
        var space = new string(' ', Math.Max(0, width - Wrapping.Length(text)));
        return toTheRight ? space + text : text + space;
    }
}
