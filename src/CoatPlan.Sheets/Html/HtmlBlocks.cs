using System.Net;
using System.Text;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Drawing;
using CoatPlan.Sheets.Text;

namespace CoatPlan.Sheets.Html;

/// <summary>How each kind of block looks on a page.</summary>
internal static class HtmlBlocks
{
    private const double PictureWidth = 740;

    /// <summary>Text that opens no element and ends no attribute.</summary>
    /// <param name="text">The text.</param>
    public static string Escaped(string text) => WebUtility.HtmlEncode(PlainText.Of(text));

    /// <summary>An element with text in it.</summary>
    /// <param name="page">The page.</param>
    /// <param name="name">Its name.</param>
    /// <param name="text">The text.</param>
    public static void Element(StringBuilder page, string name, string text) =>
        page.Append('<').Append(name).Append('>').Append(Escaped(text)).Append("</").Append(name).Append(">\n");

    /// <summary>Writes a block.</summary>
    /// <param name="page">The page.</param>
    /// <param name="block">The block.</param>
    public static void Write(StringBuilder page, Block block)
    {
        switch (block)
        {
            case Heading heading:
                Element(page, "h3", heading.Text);
                break;
            case Paragraph paragraph:
                Element(page, "p", paragraph.Text);
                break;
            case Closing closing:
                Element(page, "p", closing.Text);
                break;
            case Notice notice:
                page.Append("<p class=\"notice\">").Append(Escaped(notice.Text)).Append("</p>\n");
                break;
            case Bullets bullets:
                page.Append("<ul>\n");
                foreach (var item in bullets.Items)
                    Element(page, "li", item);
                page.Append("</ul>\n");
                break;
            case Grid grid:
                Write(page, grid);
                break;
            case Columns columns:
                foreach (var part in columns.Parts)
                    Write(page, part);
                break;
            case WorkStep step:
                Write(page, step);
                break;
            case NewPage next:
                page.Append("<div class=\"page\">").Append(Escaped(next.Head)).Append("</div>\n");
                break;
            case Blanks blanks:
                Write(page, blanks.Labels);
                break;
            case Tags tags:
                page.Append("<div class=\"tags\">\n");
                foreach (var tag in tags.Items)
                    Write(page, tag);
                page.Append("</div>\n");
                break;
            case Timeline timeline:
                Write(page, timeline);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "A kind of block.");
        }
    }

    // Nobody hears a picture, and on a narrow telephone nobody reads it: the same stands below it in letters.
    private static void Write(StringBuilder page, Timeline timeline)
    {
        var pictures = new TimelinePictures(timeline, PictureWidth, SvgPicture.WidthOf);
        page.Append("<div class=\"picture\">\n");
        SvgPicture.Write(page, pictures.Legend());
        foreach (var day in timeline.Days)
            SvgPicture.Write(page, pictures.Of(day, TimelineSpacing.Roomy));
        page.Append("</div>\n<details>\n<summary>The same in letters</summary>\n<pre>\n");
        var text = new StringBuilder();
        TextTimeline.Write(text, timeline);
        foreach (var line in text.ToString().TrimEnd('\n').Split('\n'))
            page.Append(Escaped(line)).Append('\n');
        page.Append("</pre>\n</details>\n");
    }

    private static void Write(StringBuilder page, Grid grid)
    {
        page.Append("<div class=\"table\"><table>\n");
        Row(page, grid, "th", [.. grid.Columns.Select(column => column.Title)]);
        foreach (var row in grid.EndsInSum ? grid.Rows.SkipLast(1) : grid.Rows)
            Row(page, grid, "td", row);
        if (grid.EndsInSum)
            Row(page, grid, "th", grid.Rows[^1]);
        page.Append("</table></div>\n");
    }

    private static void Row(StringBuilder page, Grid grid, string name, ImmutableArray<string> cells)
    {
        page.Append("<tr>");
        foreach (var (column, cell) in grid.Columns.Zip(cells))
            page.Append('<').Append(name).Append(column.IsNumber ? " class=\"number\">" : ">").Append(Escaped(cell)).Append("</").Append(name).Append('>');
        page.Append("</tr>\n");
    }

    private static void Write(StringBuilder page, WorkStep step)
    {
        page.Append("<div class=\"step\">\n");
        if (step.Ticks.IsEmpty)
            page.Append("<label><input type=\"checkbox\" /> ").Append(Escaped($"{step.When}  {step.Title}")).Append("</label>\n");
        else
            page.Append("<p class=\"title\">").Append(Escaped($"{step.When}  {step.Title}")).Append("</p>\n");
        if (step.Where.Length > 0)
            Element(page, "p", step.Where);
        foreach (var detail in step.Details)
            Element(page, "p", detail);
        foreach (var reading in step.Readings)
            page.Append("<p>read ").Append(Escaped(reading)).Append(": <span class=\"write\"></span></p>\n");
        if (!step.Ticks.IsEmpty)
            page.Append("<p>").AppendJoin(' ', step.Ticks.Select(tick => $"<label>{Escaped(tick)} <input type=\"checkbox\" /></label>")).Append("</p>\n");
        if (!step.Blanks.IsEmpty)
            Write(page, step.Blanks);
        page.Append("</div>\n");
    }

    private static void Write(StringBuilder page, ImmutableArray<string> blanks) =>
        page.Append("<p>").AppendJoin(' ', blanks.Select(label => $"{Escaped(label)} <span class=\"write\"></span>")).Append("</p>\n");

    private static void Write(StringBuilder page, Tag tag)
    {
        page.Append("<div class=\"tag\"><p class=\"notice\">").Append(Escaped(tag.Number)).Append("</p>\n<p class=\"title\">").Append(Escaped(tag.Name)).Append("</p>\n");
        foreach (var line in tag.Lines)
            Element(page, "p", line);
        foreach (var blank in tag.Blanks)
            Write(page, [blank]);
        page.Append("</div>\n");
    }
}
