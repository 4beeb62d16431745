using CoatPlan.Sheets.Content;

namespace CoatPlan.Sheets.Pdf;

/// <summary>A step on paper: a box to tick left of it, what is really done right of it, readings below it.</summary>
internal static class PdfWorkStep
{
    private const double Gap = 4;
    private const double TickBox = 11;
    private const double Indent = TickBox + Gap;
    private const double Writing = 44;
    private const double ReadingBox = 56;

    // High enough for figures written with a thick pencil.
    private const double WritingHeight = 13.5;

    private const double Row = WritingHeight + 2;

    /// <summary>Height that a step wants on one page: all of it, unless it is longer than half a page.</summary>
    public static double BeginningOf(SheetPen pen, WorkStep step) => Math.Min(HeightOf(pen, step, Title(pen, step)), pen.Room / 2);

    public static void Draw(SheetPen pen, WorkStep step)
    {
        var title = Title(pen, step);
        pen.Need(BeginningOf(pen, step));
        if (step.Ticks.IsEmpty)
            pen.Box(pen.Left, pen.Y + 1, TickBox, TickBox);
        Right(pen, step);
        foreach (var line in title)
        {
            pen.Need(SheetPen.LineOf(SheetPen.Strong));
            pen.Line(line, SheetPen.Strong, pen.Left + Indent);
            pen.Space(SheetPen.LineOf(SheetPen.Strong));
        }

        pen.Space(BelowTitle(step));
        if (step.Where.Length > 0)
            pen.Text(step.Where, pen.Body, Indent);
        foreach (var detail in step.Details)
            pen.Text(detail, SheetPen.Small, Indent);
        Boxes(pen, [.. step.Readings.Select(reading => "read " + reading)], ReadingBox);
        Boxes(pen, step.Ticks, TickBox);
        pen.Space(1.5 * Gap);
    }

    // Boxes beside the title are higher than it.
    private static double BelowTitle(WorkStep step) => step.Blanks.IsEmpty ? 0 : WritingHeight - 12;

    private static ImmutableArray<string> Title(SheetPen pen, WorkStep step) =>
        pen.Lines($"{step.When}  {step.Title}", SheetPen.Strong, pen.Width - Indent - RightOf(pen, step));

    private static double RightOf(SheetPen pen, WorkStep step) =>
        step.Blanks.Sum(blank => pen.WidthOf(blank, SheetPen.Small) + Writing + (2 * Gap));

    private static void Right(SheetPen pen, WorkStep step)
    {
        var x = pen.Left + pen.Width - RightOf(pen, step) + Gap;
        foreach (var blank in step.Blanks)
        {
            pen.Line(blank, SheetPen.Small, x);
            x += pen.WidthOf(blank, SheetPen.Small) + Gap;
            pen.Box(x, pen.Y - 1, Writing, WritingHeight);
            x += Writing + Gap;
        }
    }

    // Words, each with a box behind it, as many in a row as fit.
    private static void Boxes(SheetPen pen, ImmutableArray<string> words, double box)
    {
        if (words.IsEmpty)
            return;

        pen.Space(0.75 * Gap);
        foreach (var row in Rows(pen, words, box))
        {
            pen.Need(Row);
            var x = pen.Left + Indent;
            foreach (var word in row)
            {
                pen.Line(word, SheetPen.Small, x);
                x += pen.WidthOf(word, SheetPen.Small) + Gap;
                pen.Box(x, pen.Y - 1, box, WritingHeight - 1);
                x += box + (2 * Gap);
            }

            pen.Space(Row);
        }
    }

    private static List<List<string>> Rows(SheetPen pen, ImmutableArray<string> words, double box)
    {
        var rows = new List<List<string>>();
        var used = double.MaxValue;
        foreach (var word in words)
        {
            var wide = pen.WidthOf(word, SheetPen.Small) + Gap + box;
            if (used + wide > pen.Width - Indent)
            {
                rows.Add([]);
                used = 0;
            }

            rows[^1].Add(word);
            used += wide + (2 * Gap);
        }

        return rows;
    }

    private static double HeightOf(SheetPen pen, WorkStep step, ImmutableArray<string> title)
    {
        var width = pen.Width - Indent;
        var small = step.Details.Sum(detail => pen.Lines(detail, SheetPen.Small, width).Length);
        var body = step.Where.Length > 0 ? pen.Lines(step.Where, pen.Body, width).Length : 0;
        var rows = Rows(pen, [.. step.Readings.Select(reading => "read " + reading)], ReadingBox).Count + Rows(pen, step.Ticks, TickBox).Count;
        return (small * SheetPen.LineOf(SheetPen.Small)) + (body * SheetPen.LineOf(pen.Body)) + (title.Length * SheetPen.LineOf(SheetPen.Strong)) + (rows * Row) + BelowTitle(step) + (2.25 * Gap);
    }
}
