using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Drawing;

namespace CoatPlan.Sheets.Pdf;

/// <summary>How each kind of block looks on paper.</summary>
internal static class PdfBlocks
{
    private const double Gap = 4;
    private const double Indent = 12;
    private const double Dot = 8;
    private const double TickBox = 10;
    private const double WritingWidth = 56;

    /// <summary>Draws a block.</summary>
    /// <param name="pen">The pen.</param>
    /// <param name="block">The block.</param>
    /// <param name="smallType">Size of the type in columns, points.</param>
    public static void Draw(SheetPen pen, Block block, double smallType)
    {
        switch (block)
        {
            case Heading heading:
                Draw(pen, heading);
                break;
            case Paragraph paragraph:
                pen.Text(paragraph.Text, pen.Body);
                pen.Space(Gap);
                break;
            case Notice notice:
                Draw(pen, notice);
                break;
            case Bullets bullets:
                Draw(pen, bullets);
                break;
            case Grid grid:
                PdfGrid.Draw(pen, grid);
                break;
            case Columns columns:
                pen.InColumns(smallType, (2 * SheetPen.LineOf(pen.Body)) - Gap, () => columns.Parts.ToList().ForEach(part => Draw(pen, part, smallType)));
                break;
            case WorkStep step:
                Draw(pen, step);
                break;
            case Timeline timeline:
                Draw(pen, timeline);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "A kind of block.");
        }
    }

    private static void Draw(SheetPen pen, Heading heading)
    {
        pen.Need(3 * SheetPen.LineOf(pen.Head));
        pen.Space(Gap);
        pen.Mark(heading.Text);
        pen.Text(heading.Text, pen.Head);
        pen.Space(Gap / 2);
    }

    private static void Draw(SheetPen pen, Timeline timeline)
    {
        var pictures = new TimelinePictures(timeline, pen.Width, pen.WidthOf);
        pen.Draw(pictures.Legend());
        foreach (var day in timeline.Days)
        {
            var picture = pictures.Of(day);
            pen.Need(picture.Height);
            pen.Mark(day.Title);
            pen.Draw(picture);
        }
    }

    private static void Draw(SheetPen pen, Notice notice)
    {
        var lines = pen.Lines(notice.Text, SheetPen.Large, pen.Width - 2 * Indent);
        var height = lines.Length * SheetPen.LineOf(SheetPen.Large) + 2 * Gap;
        pen.Need(height + Gap);
        pen.Box(pen.Left, pen.Y, pen.Width, height);
        pen.Space(Gap);
        foreach (var line in lines)
        {
            pen.Line(line, SheetPen.Large, pen.Left + Indent);
            pen.Space(SheetPen.LineOf(SheetPen.Large));
        }

        pen.Space(2 * Gap);
    }

    private static void Draw(SheetPen pen, Bullets bullets)
    {
        foreach (var item in bullets.Items)
        {
            pen.Need(SheetPen.LineOf(pen.Body));
            pen.Line("•", pen.Body, pen.Left);
            pen.Text(item, pen.Body, Dot);
        }

        pen.Space(Gap);
    }

    private static void Draw(SheetPen pen, WorkStep step)
    {
        pen.Need(HeightOf(pen, step));
        pen.Box(pen.Left, pen.Y + 1, TickBox, TickBox);
        pen.Text($"{step.When}  {step.Title}", SheetPen.Strong, TickBox + Gap);
        if (step.Where.Length > 0)
            pen.Text(step.Where, pen.Body, TickBox + Gap);
        foreach (var detail in step.Details)
            pen.Text(detail, SheetPen.Small, TickBox + Gap);
        Writing(pen, ["really from", "to", .. step.Readings.Select(reading => "read " + reading)]);
        pen.Space(2 * Gap);
    }

    // Words, each with a box to write in behind it, as many in a row as fit.
    private static void Writing(SheetPen pen, ImmutableArray<string> words)
    {
        var height = SheetPen.LineOf(SheetPen.Small) + Gap;
        var x = pen.Left + TickBox + Gap;
        pen.Space(Gap / 2);
        pen.Need(height);
        foreach (var word in words)
        {
            var width = pen.WidthOf(word, SheetPen.Small);
            if (x + width + Gap + WritingWidth > pen.Left + pen.Width)
            {
                pen.Space(height);
                pen.Need(height);
                x = pen.Left + TickBox + Gap;
            }

            pen.Line(word, SheetPen.Small, x);
            pen.Box(x + width + Gap, pen.Y - 1, WritingWidth, SheetPen.LineOf(SheetPen.Small));
            x += width + WritingWidth + 3 * Gap;
        }

        pen.Space(height);
    }

    private static double HeightOf(SheetPen pen, WorkStep step)
    {
        var width = pen.Width - TickBox - Gap;
        var small = step.Details.Sum(detail => pen.Lines(detail, SheetPen.Small, width).Length);
        var body = step.Where.Length > 0 ? pen.Lines(step.Where, pen.Body, width).Length : 0;
        var strong = pen.Lines($"{step.When}  {step.Title}", SheetPen.Strong, width).Length;
        var writing = 1 + (step.Readings.Length + 1) / 2;
        return small * SheetPen.LineOf(SheetPen.Small) + body * SheetPen.LineOf(pen.Body) + strong * SheetPen.LineOf(SheetPen.Strong)
            + writing * (SheetPen.LineOf(SheetPen.Small) + Gap) + 3 * Gap;
    }
}
