using System.Globalization;
using CoatPlan.Sheets.Content;
using PdfSharp;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace CoatPlan.Sheets.Pdf;

/// <summary>Writes down the page, line by line, and turns to a new one where the next lines would not fit. All measures are in points.</summary>
internal sealed class SheetPen
{
    private const double Margin = 48;
    private const double FootHeight = 24;
    private const double LineSpacing = 1.3;

    private readonly PdfDocument document;
    private readonly Sheet sheet;
    private readonly PageSize size;
    private XGraphics graphics;

    public SheetPen(PdfDocument document, Sheet sheet, PaperSize paper)
    {
        this.document = document;
        this.sheet = sheet;
        size = paper == PaperSize.A4 ? PageSize.A4 : PageSize.Letter;
        graphics = Turn();
    }

    public static XFont Body { get; } = Font(9.5, XFontStyleEx.Regular);

    public static XFont Strong { get; } = Font(9.5, XFontStyleEx.Bold);

    public static XFont Small { get; } = Font(8.5, XFontStyleEx.Regular);

    public static XFont Head { get; } = Font(12, XFontStyleEx.Bold);

    private static XFont Title { get; } = Font(18, XFontStyleEx.Bold);

    /// <summary>Left edge of the text.</summary>
    public static double Left => Margin;

    /// <summary>Width of the text.</summary>
    public double Width { get; private set; }

    /// <summary>Where the next line begins.</summary>
    public double Y { get; private set; }

    private double Bottom { get; set; }

    /// <summary>The height of a line.</summary>
    public static double LineOf(XFont font) => font.Size * LineSpacing;

    /// <summary>Turns the page where less than a height is left; what is higher than a page begins on a new one.</summary>
    public void Need(double height)
    {
        if (Y + height <= Bottom || Y <= Margin + LineOf(Title) + LineOf(Body) + 12)
            return;

        graphics.Dispose();
        graphics = Turn();
    }

    public void Space(double height) => Y += height;

    /// <summary>Text in lines no wider than a width, at a distance from the left edge.</summary>
    public void Text(string text, XFont font, double indent = 0)
    {
        foreach (var line in Lines(text, font, Width - indent))
        {
            Need(LineOf(font));
            Line(line, font, Margin + indent);
            Y += LineOf(font);
        }
    }

    /// <summary>One line at the current height, without moving on.</summary>
    public void Line(string text, XFont font, double x) =>
        graphics.DrawString(text, font, XBrushes.Black, new XPoint(x, Y + font.Size));

    /// <summary>The lines of a text.</summary>
    public ImmutableArray<string> Lines(string text, XFont font, double width)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = "";
        foreach (var word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, font, width)))
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

    public double WidthOf(string text, XFont font) => graphics.MeasureString(text, font).Width;

    /// <summary>A box to tick or to write in.</summary>
    public void Box(double x, double y, double width, double height) =>
        graphics.DrawRectangle(new XPen(XColors.Black, 0.8), x, y, width, height);

    /// <summary>A thin line across.</summary>
    public void Rule(double x, double width, double y) => graphics.DrawLine(new XPen(XColors.Black, 0.5), x, y, x + width, y);

    /// <summary>Adds the current page to the document's outline.</summary>
    public void Mark(string heading) => document.Outlines.Add(heading, document.Pages[^1]);

    /// <summary>Writes "page 2 of 3" on every page.</summary>
    public void NumberPages()
    {
        graphics.Dispose();
        for (var number = 0; number < document.PageCount; number++)
        {
            using var foot = XGraphics.FromPdfPage(document.Pages[number], XGraphicsPdfPageOptions.Append);
            var text = string.Create(CultureInfo.InvariantCulture, $"{sheet.Title}: page {number + 1} of {document.PageCount}");
            foot.DrawString(text, Small, XBrushes.Black, new XPoint(Margin, document.Pages[number].Height.Point - Margin + FootHeight / 2));
        }
    }

    private static XFont Font(double size, XFontStyleEx style) => new(InterFonts.Family, size, style);

    private XGraphics Turn()
    {
        var page = document.AddPage();
        page.Size = size;
        Width = page.Width.Point - 2 * Margin;
        Bottom = page.Height.Point - Margin - FootHeight / 2;
        Y = Margin;
        graphics = XGraphics.FromPdfPage(page);
        var job = Lines(sheet.Job, Body, Width)[0];
        Line(sheet.Title, Title, Margin);
        Y += LineOf(Title);
        Line(job, Body, Margin);
        Y += LineOf(Body) + 2;
        Rule(Margin, Width, Y);
        Y += 8;
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
