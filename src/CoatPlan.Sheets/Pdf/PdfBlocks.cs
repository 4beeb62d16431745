using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Drawing;

namespace CoatPlan.Sheets.Pdf;

/// <summary>How each kind of block looks on paper.</summary>
internal static class PdfBlocks
{
    private const double Gap = 4;
    private const double Indent = 12;
    private const double Dot = 8;

    /// <summary>Draws blocks one below the other; a heading stays with what it heads.</summary>
    /// <param name="pen">The pen.</param>
    /// <param name="blocks">The blocks.</param>
    /// <param name="smallType">Size of the type in columns, points.</param>
    public static void Draw(SheetPen pen, ImmutableArray<Block> blocks, double smallType)
    {
        for (var i = 0; i < blocks.Length; i++)
        {
            if (blocks[i] is Heading heading)
                Draw(pen, heading, BeginningOf(pen, i + 1 < blocks.Length ? blocks[i + 1] : null));
            else
                Draw(pen, blocks[i], smallType);
        }
    }

    private static void Draw(SheetPen pen, Block block, double smallType)
    {
        switch (block)
        {
            case Paragraph paragraph:
                pen.Text(paragraph.Text, pen.Body);
                pen.Space(Gap);
                break;
            case Closing:
                // The pen writes it at the foot of every page.
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
                pen.InColumns(smallType, () => Draw(pen, columns.Parts, smallType));
                break;
            case WorkStep step:
                PdfWorkStep.Draw(pen, step);
                break;
            case NewPage next:
                pen.NewPage(next.Head);
                if (next.Head.Length > 0)
                    pen.Mark(next.Head);
                break;
            case Blanks blanks:
                PdfBlanks.Draw(pen, blanks.Labels);
                break;
            case Tags tags:
                PdfTags.Draw(pen, tags);
                break;
            case Timeline timeline:
                Draw(pen, timeline);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "A kind of block.");
        }
    }

    // The height of what must not stand on the page after its heading.
    private static double BeginningOf(SheetPen pen, Block? block) => block switch
    {
        WorkStep step => PdfWorkStep.BeginningOf(pen, step),
        Grid grid => PdfGrid.BeginningOf(pen, grid),
        _ => 2 * SheetPen.LineOf(pen.Body),
    };

    private static void Draw(SheetPen pen, Heading heading, double beginning)
    {
        pen.EndSection();
        pen.Need(SheetPen.LineOf(pen.Head) + (1.5 * Gap) + beginning);
        pen.BeginSection(heading.Text);
        pen.Space(Gap);
        pen.Mark(heading.Text);
        pen.Text(heading.Text, pen.Head);
        pen.Space(Gap / 2);
    }

    private static void Draw(SheetPen pen, Timeline timeline)
    {
        var pictures = new TimelinePictures(timeline, pen.Width, pen.WidthOf);
        pen.Draw(pictures.Legend());
        foreach (var (day, picture) in timeline.Days.Zip(Days(pictures, timeline, pen.RoomLeft)))
        {
            pen.Need(picture.Height);
            pen.Mark(day.Title);
            pen.Draw(picture);
        }
    }

    // A weekend is looked at as one picture, if there is any way to have it on one page; what takes several anyway is not squeezed.
    private static Picture[] Days(TimelinePictures pictures, Timeline timeline, double room)
    {
        var roomy = Drawn(TimelineSpacing.Roomy);
        return !Fits(roomy) && Drawn(TimelineSpacing.Tight) is var tight && Fits(tight) ? tight : roomy;

        Picture[] Drawn(TimelineSpacing spacing) => [.. timeline.Days.Select(day => pictures.Of(day, spacing))];

        bool Fits(Picture[] days) => days.Sum(day => day.Height) <= room;
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
}
