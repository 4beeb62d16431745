using System.Text;
using CoatPlan.Sheets.Content;

namespace CoatPlan.Sheets.Text;

/// <summary>A sheet as plain text that reads in any window and on any printer.</summary>
public static class TextSheet
{
    /// <summary>Characters in a line.</summary>
    public const int Width = 80;

    /// <summary>Writes a sheet; lines end with a line feed and are at most <see cref="Width"/> characters wide, longer words apart.</summary>
    /// <param name="sheet">The sheet.</param>
    public static string Write(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var text = new StringBuilder();
        text.Append(sheet.Title.ToUpperInvariant()).Append('\n');
        Lines(text, sheet.Job, "", "");
        text.Append('=', Width).Append('\n');
        foreach (var block in sheet.Blocks)
            Write(text, block);
        return text.ToString();
    }

    private static void Write(StringBuilder text, Block block)
    {
        switch (block)
        {
            case Heading heading:
                text.Append('\n').Append(heading.Text.ToUpperInvariant()).Append('\n').Append('-', Math.Min(Width, heading.Text.Length)).Append('\n');
                break;
            case Paragraph paragraph:
                Lines(text, paragraph.Text, "", "");
                break;
            case Closing closing:
                text.Append('\n');
                Lines(text, closing.Text, "", "");
                break;
            case Notice notice:
                Lines(text, notice.Text, "!! ", "!! ");
                break;
            case Bullets bullets:
                foreach (var item in bullets.Items)
                    Lines(text, item, " * ", "   ");
                break;
            case Grid grid:
                TextGrid.Write(text, grid);
                break;
            case Columns columns:
                foreach (var part in columns.Parts)
                    Write(text, part);
                break;
            case WorkStep step:
                Write(text, step);
                break;
            case NewPage page:
                text.Append('\n').Append('=', Width).Append('\n');
                if (page.Head.Length > 0)
                    Lines(text, page.Head.ToUpperInvariant(), "", "");
                break;
            case Blanks blanks:
                Lines(text, Written(blanks.Labels), "", "");
                break;
            case Tags tags:
                foreach (var tag in tags.Items)
                    Write(text, tag);
                break;
            case Timeline timeline:
                TextTimeline.Write(text, timeline);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "A kind of block.");
        }
    }

    private static void Write(StringBuilder text, WorkStep step)
    {
        Lines(text, $"{step.When}  {step.Title}", step.Ticks.IsEmpty ? "[ ] " : " *  ", "    ");
        if (step.Where.Length > 0)
            Lines(text, step.Where, "    on: ", "        ");
        foreach (var detail in step.Details)
            Lines(text, detail, "    ", "    ");
        foreach (var reading in step.Readings)
            Lines(text, $"{reading}: ________", "    read ", "         ");
        if (!step.Ticks.IsEmpty)
            Lines(text, string.Join("  ", step.Ticks.Select(tick => $"{tick}_[_]")).Replace('_', ' '), "    done: ", "    ");
        if (!step.Blanks.IsEmpty)
            Lines(text, Written(step.Blanks), "    ", "    ");
        text.Append('\n');
    }

    private static void Write(StringBuilder text, Tag tag)
    {
        text.Append('-', Width).Append('\n');
        Lines(text, tag.Name, $"TAG {tag.Number}  ", "        ");
        foreach (var line in tag.Lines)
            Lines(text, line, "        ", "        ");
        foreach (var blank in tag.Blanks)
            Lines(text, Written([blank]), "        ", "        ");
    }

    private static string Written(ImmutableArray<string> labels) => string.Join("  ", labels.Select(label => $"{label}: ______"));

    private static void Lines(StringBuilder text, string paragraph, string first, string rest)
    {
        foreach (var line in Wrapping.Lines(paragraph, Width - first.Length))
        {
            text.Append(first).Append(line).Append('\n');
            first = rest;
        }
    }
}
