using CoatPlan.Sheets.Content;
using PdfSharp.Drawing;

namespace CoatPlan.Sheets.Pdf;

/// <summary>A table on paper: its head again on each page, cells wrapped, rows never cut.</summary>
internal static class PdfGrid
{
    private const double Between = 8;

    public static void Draw(SheetPen pen, Grid grid)
    {
        var weights = grid.Columns.Sum(column => column.Weight);
        var room = pen.Width - Between * (grid.Columns.Length - 1);
        var widths = grid.Columns.Select(column => room * column.Weight / weights).ToArray();
        Row(pen, grid, [.. grid.Columns.Select(column => column.Title)], widths, SheetPen.Strong);
        pen.Rule(pen.Left, pen.Width, pen.Y);
        pen.Space(2);
        foreach (var row in grid.Rows)
            Row(pen, grid, row, widths, pen.Body);
        pen.Space(Between);
    }

    private static void Row(SheetPen pen, Grid grid, ImmutableArray<string> cells, double[] widths, XFont font)
    {
        var lines = cells.Select((cell, index) => pen.Lines(cell, font, widths[index])).ToArray();
        var rows = lines.Max(cell => cell.Length);
        pen.Need(rows * SheetPen.LineOf(font));
        for (var row = 0; row < rows; row++)
        {
            var x = pen.Left;
            for (var column = 0; column < lines.Length; column++)
            {
                if (row < lines[column].Length)
                {
                    var text = lines[column][row];
                    var shift = grid.Columns[column].IsNumber ? widths[column] - pen.WidthOf(text, font) : 0;
                    pen.Line(text, font, x + shift);
                }

                x += widths[column] + Between;
            }

            pen.Space(SheetPen.LineOf(font));
        }

        pen.Space(2);
    }
}
