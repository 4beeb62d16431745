using CoatPlan.Sheets.Content;
using PdfSharp.Drawing;

namespace CoatPlan.Sheets.Pdf;

/// <summary>A table on paper: its head again on each page, cells wrapped, rows never cut, boxes to tick and lines to write on drawn.</summary>
internal static class PdfGrid
{
    private const double Between = 8;
    private const double BelowHead = 2;
    private const double TickBox = 9;

    // What a line to write on stands higher than a line of print.
    private const double AboveWriting = 6;

    /// <summary>Height of the head and the first row.</summary>
    public static double BeginningOf(SheetPen pen, Grid grid)
    {
        var widths = Widths(pen, grid);
        return HeightOf(pen, Titles(grid), widths, SheetPen.Strong) + BelowHead + (grid.Rows.IsEmpty ? 0 : HeightOf(pen, grid.Rows[0], widths, pen.Body));
    }

    public static void Draw(SheetPen pen, Grid grid)
    {
        var widths = Widths(pen, grid);
        pen.Need(BeginningOf(pen, grid));
        Head(pen, grid, widths);
        for (var row = 0; row < grid.Rows.Length; row++)
        {
            var isSum = grid.EndsInSum && row == grid.Rows.Length - 1;
            var font = isSum ? SheetPen.Strong : pen.Body;
            if (pen.Need(HeightOf(pen, grid.Rows[row], widths, font) + BelowHead))
                Head(pen, grid, widths);
            if (isSum)
            {
                pen.Rule(pen.Left, pen.Width, pen.Y);
                pen.Space(BelowHead);
            }

            Row(pen, grid, grid.Rows[row], widths, font);
        }

        pen.Space(Between);
    }

    private static ImmutableArray<string> Titles(Grid grid) => [.. grid.Columns.Select(column => column.Title)];

    private static void Head(SheetPen pen, Grid grid, ImmutableArray<double> widths)
    {
        Row(pen, grid, Titles(grid), widths, SheetPen.Strong);
        pen.Rule(pen.Left, pen.Width, pen.Y);
        pen.Space(BelowHead);
    }

    private static ImmutableArray<double> Widths(SheetPen pen, Grid grid)
    {
        var room = pen.Width - Between * (grid.Columns.Length - 1);
        return ColumnWidths.Of(grid, room, word => Math.Max(pen.WidthOf(word, pen.Body), pen.WidthOf(word, SheetPen.Strong)));
    }

    private static double HeightOf(SheetPen pen, ImmutableArray<string> cells, ImmutableArray<double> widths, XFont font) =>
        (cells.Select((cell, index) => pen.Lines(cell, font, widths[index]).Length).Max() * SheetPen.LineOf(font)) + Above(cells);

    private static double Above(ImmutableArray<string> cells) => cells.Contains(PlanWords.ToWrite) ? AboveWriting : 0;

    private static void Row(SheetPen pen, Grid grid, ImmutableArray<string> cells, ImmutableArray<double> widths, XFont font)
    {
        var lines = cells.Select((cell, index) => pen.Lines(cell, font, widths[index])).ToArray();
        var rows = lines.Max(cell => cell.Length);
        pen.Space(Above(cells));
        for (var row = 0; row < rows; row++)
        {
            var x = pen.Left;
            for (var column = 0; column < lines.Length; column++)
            {
                if (row < lines[column].Length)
                {
                    var text = lines[column][row];
                    var shift = grid.Columns[column].IsNumber ? widths[column] - pen.WidthOf(text, font) : 0;
                    if (text == PlanWords.Tick)
                        pen.Box(x, pen.Y + 1, TickBox, TickBox);
                    else if (text == PlanWords.ToWrite)
                        pen.Rule(x, widths[column], pen.Y + SheetPen.LineOf(font));
                    else
                        pen.Line(text, font, x + shift);
                }

                x += widths[column] + Between;
            }

            pen.Space(SheetPen.LineOf(font));
        }

        pen.Space(2);
    }
}
