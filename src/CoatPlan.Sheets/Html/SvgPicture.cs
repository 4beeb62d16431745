using System.Globalization;
using System.Text;
using CoatPlan.Sheets.Drawing;

namespace CoatPlan.Sheets.Html;

/// <summary>A picture inside a page, as lines and letters that need nothing from elsewhere. Source: SVG 1.1.</summary>
internal static class SvgPicture
{
    private const double LetterWidth = 0.58;

    /// <summary>About how wide a text is in a typeface that is not known before: wide enough for the usual ones.</summary>
    public static double WidthOf(string text, TypeFace type) => text.Length * type.Size * LetterWidth;

    /// <summary>Writes a picture.</summary>
    /// <param name="page">The page.</param>
    /// <param name="picture">The picture.</param>
    public static void Write(StringBuilder page, Picture picture)
    {
        page.Append("<svg viewBox=\"0 0 ").Append(Number(picture.Width)).Append(' ').Append(Number(picture.Height)).Append("\" aria-hidden=\"true\">\n");
        foreach (var mark in picture.Marks)
            Write(page, mark);
        page.Append("</svg>\n");
    }

    private static void Write(StringBuilder page, Mark mark)
    {
        switch (mark)
        {
            case Area area:
                page.Append("<polygon points=\"").Append(Points(area.Corners)).Append("\" fill=\"").Append(Grey(area.Ink)).Append("\" />\n");
                break;
            case Stroke stroke:
                page.Append("<polyline points=\"").Append(Points(stroke.Points)).Append("\" fill=\"none\" stroke=\"").Append(Grey(stroke.Ink))
                    .Append("\" stroke-width=\"").Append(Number(stroke.Width)).Append('"');
                if (!stroke.Dashes.IsEmpty)
                    page.Append(" stroke-dasharray=\"").AppendJoin(' ', stroke.Dashes.Select(Number)).Append('"');
                page.Append(" />\n");
                break;
            case Lettering lettering:
                page.Append("<text x=\"").Append(Number(lettering.X)).Append("\" y=\"").Append(Number(lettering.Y)).Append("\" font-size=\"").Append(Number(lettering.Type.Size))
                    .Append(lettering.Type.Weight == TypeWeight.Bold ? "\" font-weight=\"bold\" fill=\"" : "\" fill=\"").Append(Grey(lettering.Ink)).Append("\">")
                    .Append(HtmlBlocks.Escaped(lettering.Text)).Append("</text>\n");
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(mark), mark, "A kind of mark.");
        }
    }

    private static string Points(ImmutableArray<(double X, double Y)> points) => string.Join(' ', points.Select(point => $"{Number(point.X)},{Number(point.Y)}"));

    private static string Number(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Grey(double ink)
    {
        var level = ((int)Math.Round(ink * 255)).ToString("x2", CultureInfo.InvariantCulture);
        return $"#{level}{level}{level}";
    }
}
