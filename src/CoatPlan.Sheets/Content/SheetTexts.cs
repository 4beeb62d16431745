namespace CoatPlan.Sheets.Content;

/// <summary>The texts of a sheet, each changed the same way.</summary>
internal static class SheetTexts
{
    /// <summary>The sheet with every text changed.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="change">What becomes of a text.</param>
    public static Sheet Change(Sheet sheet, Func<string, string> change) =>
        sheet with { Title = change(sheet.Title), Job = change(sheet.Job), Blocks = [.. sheet.Blocks.Select(block => Change(block, change))] };

    private static Block Change(Block block, Func<string, string> change) => block switch
    {
        Heading heading => new Heading(change(heading.Text)),
        Paragraph paragraph => new Paragraph(change(paragraph.Text)),
        Notice notice => new Notice(change(notice.Text)),
        Closing closing => new Closing(change(closing.Text)),
        NewPage page => new NewPage(change(page.Head)),
        Bullets bullets => new Bullets(All(bullets.Items, change)),
        Blanks blanks => new Blanks(All(blanks.Labels, change)),
        Columns columns => new Columns([.. columns.Parts.Select(part => Change(part, change))]),
        Grid grid => grid with { Columns = [.. grid.Columns.Select(column => column with { Title = change(column.Title) })], Rows = [.. grid.Rows.Select(row => All(row, change))] },
        Tags tags => new Tags([.. tags.Items.Select(tag => new Tag(change(tag.Number), change(tag.Name), All(tag.Lines, change), All(tag.Blanks, change)))]),
        WorkStep step => new WorkStep(change(step.When), change(step.Title), change(step.Where), All(step.Details, change), All(step.Readings, change))
        {
            Ticks = All(step.Ticks, change),
            Blanks = All(step.Blanks, change),
        },
        Timeline timeline => timeline with { Days = [.. timeline.Days.Select(day => Change(day, change))] },
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "A kind of block."),
    };

    private static TimelineDay Change(TimelineDay day, Func<string, string> change) => day with
    {
        Title = change(day.Title),
        Lanes = [.. day.Lanes.Select(lane => new TimelineLane(change(lane.Title), [.. lane.Bars.Select(bar => bar with { Texts = All(bar.Texts, change) })]))],
        Ranges = All(day.Ranges, change),
    };

    private static ImmutableArray<string> All(ImmutableArray<string> texts, Func<string, string> change) => [.. texts.Select(change)];
}
