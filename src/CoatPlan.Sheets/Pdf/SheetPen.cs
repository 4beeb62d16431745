using System.Globalization;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Drawing;
using PdfSharp;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace CoatPlan.Sheets.Pdf;

/// <summary>Writes down the page, line by line, and turns to a new one where the next lines would not fit. All measures are in points.</summary>
internal sealed class SheetPen
{
    /// <summary>White around the text, on all sides.</summary>
    public const double Margin = 28;

    private const int MostJobLines = 2;
    private const double FootHeight = 16;
    private const double FootLine = 9;
    private const double LineSpacing = 1.25;
    private const double NarrowSpacing = 1.17;
    private const double BetweenColumns = 12;

    private readonly List<(string Head, int Page)> parts = [];
    private readonly PdfDocument document;
    private readonly Sheet sheet;
    private readonly PageSize size;
    private XGraphics graphics;
    private double pageWidth;
    private double columnTop;
    private int column;
    private int columns = 1;
    private string head = "";
    private string section = "";
    private ImmutableArray<string> closing = [];

    public SheetPen(PdfDocument document, Sheet sheet, PaperSize paper, double bodySize)
    {
        Body = Font(bodySize, XFontStyleEx.Regular);
        this.document = document;
        this.sheet = sheet;
        size = paper == PaperSize.A4 ? PageSize.A4 : PageSize.Letter;
        graphics = Turn();
    }

    public XFont Body { get; private set; }

    public static XFont Strong { get; } = Font(9.5, XFontStyleEx.Bold);

    public static XFont Small { get; } = Font(8.5, XFontStyleEx.Regular);

    public static XFont Large { get; } = Font(13, XFontStyleEx.Bold);

    public XFont Head { get; private set; } = Font(12, XFontStyleEx.Bold);

    private static XFont Job { get; } = Font(9.5, XFontStyleEx.Regular);

    private static XFont Foot { get; } = Font(7.5, XFontStyleEx.Regular);

    private static XFont Title { get; } = Font(16, XFontStyleEx.Bold);

    /// <summary>Left edge of the text.</summary>
    public double Left => Margin + column * (Width + BetweenColumns);

    /// <summary>Width of the text, of one column where there are two.</summary>
    public double Width => (pageWidth - (columns - 1) * BetweenColumns) / columns;

    /// <summary>Where the next line begins.</summary>
    public double Y { get; private set; }

    /// <summary>Height that a page has for text.</summary>
    public double Room => Bottom - columnTop;

    /// <summary>Height that is left on this page.</summary>
    public double RoomLeft => Bottom - Y;

    private double Bottom { get; set; }

    /// <summary>The height of a line.</summary>
    public static double LineOf(XFont font) => font.Size * (font.Size < Small.Size ? NarrowSpacing : LineSpacing);

    /// <summary>Turns the page, or goes to the next column, where less than a height is left, and says whether it did; what is higher than a page begins on a new one.</summary>
    public bool Need(double height)
    {
        if (Y + height <= Bottom || Y <= columnTop)
            return false;

        if (column + 1 < columns)
        {
            column++;
            Y = columnTop;
            return true;
        }

        graphics.Dispose();
        graphics = Turn();
        return true;
    }

    /// <summary>Turns to a new page, unless nothing is on this one yet, and says at the head of it and of those after it what they are for.</summary>
    public void NewPage(string what)
    {
        var blank = Y <= columnTop;
        head = what;
        section = "";
        if (blank)
            document.Pages.Remove(document.Pages[^1]);
        graphics.Dispose();
        graphics = Turn();
        parts.Add((what, document.PageCount - 1));
    }

    /// <summary>Names what follows; where it runs over a page, the next one begins by saying so.</summary>
    public void BeginSection(string heading) => section = columns == 1 ? heading : "";

    /// <summary>What follows belongs to no heading yet.</summary>
    public void EndSection() => section = "";

    /// <summary>Draws in two columns of smaller type from here on, and comes back to one below the longer of them.</summary>
    /// <param name="typeSize">Size of the type in the columns, points.</param>
    /// <param name="draw">What draws.</param>
    public void InColumns(double typeSize, Action draw)
    {
        var (body, head) = (Body, Head);
        (Body, Head) = (Font(typeSize, XFontStyleEx.Regular), Font(typeSize + 1.5, XFontStyleEx.Bold));
        (columns, column, columnTop, section) = (2, 0, Y, "");
        draw();
        Y = column > 0 ? Bottom : Y;
        (columns, column) = (1, 0);
        (Body, Head) = (body, head);
    }

    public void Space(double height) => Y += height;

    /// <summary>Text in lines no wider than a width, at a distance from the left edge.</summary>
    public void Text(string text, XFont font, double indent = 0)
    {
        foreach (var line in Lines(text, font, Width - indent))
        {
            Need(LineOf(font));
            Line(line, font, Left + indent);
            Y += LineOf(font);
        }
    }

    /// <summary>One line at the current height, without moving on.</summary>
    public void Line(string text, XFont font, double x) =>
        Put(graphics, text, font, XBrushes.Black, new XPoint(x, Y + font.Size));

    /// <summary>The lines of a text.</summary>
    public ImmutableArray<string> Lines(string text, XFont font, double width)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = "";
        foreach (var word in PlainText.Of(text).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, font, width)))
        {
            if (line.Length > 0 && WidthOf($"{line} {word}", font) > width)
            {
                lines.Add(line);
                line = "";
            }

            line = line.Length == 0 ? word : $"{line} {word}";
        }

        lines.Add(line);
        return lines.ToImmutable();
    }

    public double WidthOf(string text, XFont font) => WidthOf(graphics, text, font);

    /// <summary>A box to tick or to write in.</summary>
    public void Box(double x, double y, double width, double height) =>
        graphics.DrawRectangle(new XPen(XColors.Black, 0.8), x, y, width, height);

    /// <summary>A thin line across.</summary>
    public void Rule(double x, double width, double y) => graphics.DrawLine(new XPen(XColors.Black, 0.5), x, y, x + width, y);

    /// <summary>A picture across the page, on a new one where it would not fit.</summary>
    public void Draw(Picture picture)
    {
        Need(picture.Height);
        foreach (var mark in picture.Marks)
            Draw(mark);
        Y += picture.Height;
    }

    /// <summary>The lines of a text in a type.</summary>
    public ImmutableArray<string> Lines(string text, TypeFace type, double width) => Lines(text, Font(type), width);

    /// <summary>Width of a text in a type, points.</summary>
    public double WidthOf(string text, TypeFace type) => WidthOf(text, Font(type));

    /// <summary>Adds the current page to the document's outline.</summary>
    public void Mark(string heading) => document.Outlines.Add(PlainText.Of(heading), document.Pages[^1]);

    /// <summary>Writes what the sheet closes with and "page 2 of 3" on every page, and the same of the part that is handed out alone.</summary>
    public void NumberPages()
    {
        graphics.Dispose();
        for (var number = 0; number < document.PageCount; number++)
        {
            using var foot = XGraphics.FromPdfPage(document.Pages[number], XGraphicsPdfPageOptions.Append);
            var text = string.Create(CultureInfo.InvariantCulture, $"{sheet.Title}: page {number + 1} of {document.PageCount}{PartOf(number)}");
            var bottom = document.Pages[number].Height.Point - Margin;
            for (var line = 0; line < closing.Length; line++)
                Put(foot, closing[line], Foot, XBrushes.Black, new XPoint(Margin, bottom - ((closing.Length - 1 - line) * FootLine) - 2));
            Put(foot, text, Small, XBrushes.Black, new XPoint(Margin, bottom + FootHeight / 2));
        }
    }

    private string PartOf(int number)
    {
        var at = parts.FindLastIndex(part => part.Page <= number);
        if (at < 0 || parts[at].Head.Length == 0)
            return "";

        var end = at + 1 < parts.Count ? parts[at + 1].Page : document.PageCount;
        return string.Create(CultureInfo.InvariantCulture, $"; {PlainText.Of(parts[at].Head)}: page {number - parts[at].Page + 1} of {end - parts[at].Page}");
    }

    private void Draw(Mark mark)
    {
        switch (mark)
        {
            case Area area:
                graphics.DrawPolygon(new XSolidBrush(Grey(area.Ink)), [.. area.Corners.Select(At)], XFillMode.Winding);
                break;
            case Stroke stroke:
                var line = new XPen(Grey(stroke.Ink), stroke.Width);
                if (!stroke.Dashes.IsEmpty)
                    line.DashPattern = [.. stroke.Dashes.Select(length => length / stroke.Width)];
                graphics.DrawLines(line, [.. stroke.Points.Select(At)]);
                break;
            case Lettering lettering:
                Put(graphics, PlainText.Of(lettering.Text), Font(lettering.Type), new XSolidBrush(Grey(lettering.Ink)), At((lettering.X, lettering.Y)));
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(mark), mark, "A kind of mark.");
        }
    }

    private XPoint At((double X, double Y) point) => new(Left + point.X, Y + point.Y);

    private static XColor Grey(double ink) => XColor.FromGrayScale(ink);

    private static XFont Font(TypeFace type) => Font(type.Size, type.Weight == TypeWeight.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);

    private static XFont Font(double size, XFontStyleEx style) => new(SheetFonts.Family, size, style);

    private static XFont In(string family, XFont font) => family == SheetFonts.Family ? font : new XFont(family, font.Size, font.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);

    private static double WidthOf(XGraphics page, string text, XFont font) => TypeRuns.Of(text).Sum(run => page.MeasureString(run.Text, In(run.Family, font)).Width);

    // All text goes through here, each run of it in the typeface that has its letters.
    private static void Put(XGraphics page, string text, XFont font, XBrush brush, XPoint at)
    {
        foreach (var run in TypeRuns.Of(text))
        {
            var type = In(run.Family, font);
            page.DrawString(run.Text, type, brush, at);
            at.X += page.MeasureString(run.Text, type).Width;
        }
    }

    // A long name stands in full in the document's title.
    private ImmutableArray<string> JobLines()
    {
        var lines = Lines(sheet.Job, Job, pageWidth);
        return lines.Length <= MostJobLines ? lines : [.. lines.Take(MostJobLines - 1), Lines(lines[MostJobLines - 1], Job, pageWidth - WidthOf("…", Job))[0] + "…"];
    }

    private XGraphics Turn()
    {
        var page = document.AddPage();
        page.Size = size;
        if (sheet.Shape == SheetShape.Landscape)
            (page.Width, page.Height) = (page.Height, page.Width);
        pageWidth = page.Width.Point - 2 * Margin;
        Y = Margin;
        graphics = XGraphics.FromPdfPage(page);
        closing = sheet.Blocks.OfType<Closing>().SelectMany(block => Lines(block.Text, Foot, pageWidth)).ToImmutableArray();
        Bottom = page.Height.Point - Margin - (FootHeight / 2) - (closing.Length * FootLine);
        column = 0;
        Line(sheet.Title, Title, Margin);
        Y += LineOf(Title);
        var wide = head.Length == 0 ? 0 : WidthOf(head, Title) + BetweenColumns;
        if (wide > 0)
            Put(graphics, PlainText.Of(head), Title, XBrushes.Black, new XPoint(Margin + pageWidth - wide + BetweenColumns, Margin + Title.Size));
        foreach (var line in JobLines())
        {
            Line(line, Job, Margin);
            Y += LineOf(Job);
        }

        Y += 2;
        Rule(Margin, pageWidth, Y);
        Y += 6;
        if (section.Length > 0)
        {
            Line(Lines($"{section}, continued", Head, pageWidth)[0], Head, Margin);
            Y += LineOf(Head) + 2;
        }

        columnTop = Y;
        return graphics;
    }

    private IEnumerable<string> Pieces(string word, XFont font, double width)
    {
        var letters = new StringInfo(word);
        var piece = "";
        for (var i = 0; i < letters.LengthInTextElements; i++)
        {
            var letter = letters.SubstringByTextElements(i, 1);
            if (piece.Length > 0 && WidthOf(piece + letter, font) > width)
            {
                yield return piece;
                piece = "";
            }

            piece += letter;
        }

        yield return piece;
    }
}
