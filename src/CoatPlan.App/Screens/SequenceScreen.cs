using CoatPlan.App.Desk;
using CoatPlan.App.Wording;
using CoatPlan.Plans;
using CoatPlan.Sheets.Text;

namespace CoatPlan.App.Screens;

/// <summary>The steps day by day; everything about the chosen one beside them where there is room, below them elsewhere.</summary>
internal static class SequenceScreen
{
    private const int WidthForBeside = 110;

    private const int DetailRows = 9;

    private const int LongestDetail = 400;

    private const int TimeWidth = 13;

    // As wide as "1 h 25 min".
    private const int HandsWidth = 10;

    private const int HandsAt = TimeWidth + 1;

    private const int MarkAt = HandsAt + HandsWidth + 1;

    private const int TitleAt = MarkAt + 2;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="desk">The desk.</param>
    public static void Draw(Canvas canvas, JobDesk desk)
    {
        if (desk.Plan is not { } plan)
            return;

        if (plan.Steps.IsEmpty)
        {
            Reasons(new Reader(canvas, 0), plan);
            return;
        }

        var beside = canvas.Width >= WidthForBeside;
        var (listWidth, listRows) = ListSize(canvas.Width, canvas.Height);
        var list = new Canvas(listWidth, listRows);
        List(list, desk, plan);
        canvas.Paste(0, 0, list);
        var detail = beside ? new Canvas(canvas.Width - listWidth - 2, canvas.Height) : new Canvas(canvas.Width, canvas.Height - listRows - 1);
        Detail(detail, desk, plan);
        canvas.Paste(beside ? listWidth + 2 : 0, beside ? 0 : listRows + 1, detail);
    }

    private static void List(Canvas canvas, JobDesk desk, Plan plan)
    {
        var rows = Rows(desk, plan, canvas.Width);
        var chosenRow = Math.Max(0, rows.FindIndex(row => row.Step == desk.StepAt));
        var first = Scroll.First(chosenRow, rows.Count, canvas.Height);
        for (var y = 0; y < canvas.Height && first + y < rows.Count; y++)
        {
            var row = rows[first + y];
            if (row.Step is { } at)
                Row(canvas, y, plan.Steps[at], row, at == desk.StepAt);
            else
                canvas.Field(0, y, canvas.Width, row.Text, Ink.Strong);
        }
    }

    /// <summary>The step in a row of the list; null where there is none.</summary>
    /// <param name="width">Columns of the place.</param>
    /// <param name="height">Rows of the place.</param>
    /// <param name="y">The row.</param>
    /// <param name="desk">The desk.</param>
    public static int? At(int width, int height, int y, JobDesk desk)
    {
        if (desk.Plan is not { } plan || plan.Steps.IsEmpty)
            return null;

        var (listWidth, listRows) = ListSize(width, height);
        var rows = Rows(desk, plan, listWidth);
        var at = Scroll.First(Math.Max(0, rows.FindIndex(row => row.Step == desk.StepAt)), rows.Count, listRows) + y;
        return y >= 0 && y < listRows && at < rows.Count ? rows[at].Step : null;
    }

    private static (int Width, int Rows) ListSize(int width, int height) =>
        width >= WidthForBeside ? (width * 11 / 20, height) : (width, Math.Max(3, height - DetailRows - 1));

    // A day, or a step with the names of its surfaces: on as many rows as they need, so that no name is cut.
    private static List<ListRow> Rows(JobDesk desk, Plan plan, int width)
    {
        var rows = new List<ListRow>();
        LocalDate? day = null;
        for (var at = 0; at < plan.Steps.Length; at++)
        {
            var step = plan.Steps[at];
            if (!desk.Lists(step))
                continue;

            if (day != step.Start.Date)
                rows.Add(new ListRow(null, true, Clock.Day(step.Start.Date) + OfStation(desk)));
            day = step.Start.Date;
            var name = desk.StationAt is null ? Sentences.Named(plan, step) : Sentences.Titled(plan, step);
            var lines = Wrapping.Lines(name, Math.Max(1, width - TitleAt)).ToList();
            for (var line = 0; line < lines.Count; line++)
                rows.Add(new ListRow(at, line == 0, lines[line]));
        }

        return rows;
    }

    private static string OfStation(JobDesk desk) => desk.StationAt is { } station ? $", station {station} of {desk.Stations}" : "";

    private static void Row(Canvas canvas, int y, PlanStep step, ListRow row, bool chosen)
    {
        var ink = chosen ? Ink.Chosen : Ink.Plain;
        canvas.Field(0, y, canvas.Width, "", ink);
        canvas.Write(TitleAt, y, row.Text, ink);
        if (!row.IsFirst)
            return;

        canvas.Write(0, y, $"{(chosen ? ">" : " ")} {Clock.Time(step.Start)}-{Clock.Time(step.End)}", ink);
        canvas.FieldRight(HandsAt, y, HandsWidth, Written.Minutes(step.HandsMin), ink);
        canvas.Write(MarkAt, y, Mark(step), step.Spray && !chosen ? Ink.Spray : ink);
    }

    private static string Mark(PlanStep step) => step switch
    {
        { Done: true } => "x",
        { Spray: true } => "*",
        { MakesDust: true } => "~",
        _ => " ",
    };

    private static void Detail(Canvas canvas, JobDesk desk, Plan plan)
    {
        if (desk.Step is not { } step)
            return;

        var page = StepPage.Of(plan, step, desk.Job?.Units ?? Jobs.PrintUnits.Us);
        var whole = new Canvas(canvas.Width, LongestDetail);
        var text = new Reader(whole, 0);
        text.Say(page.Title, Ink.Strong);
        PageScreen.Lines(text, page, canvas.Width);
        text.Item("marks   ", "* sprays   ~ makes dust   x done", Ink.Quiet);
        if (!plan.Reasons.IsEmpty)
        {
            text.Skip();
            Reasons(text, plan);
        }

        canvas.Paste(0, 0, whole);
        if (text.Y > canvas.Height)
            canvas.Field(0, canvas.Height - 1, canvas.Width, $"-- {text.Y - canvas.Height + 1} more, {Keys.NameOf(Word.Enter)} to read all --", Ink.Quiet);
    }

    private static void Reasons(Reader text, Plan plan)
    {
        text.Say("There is no plan that meets what was asked:", Ink.Warning);
        foreach (var reason in plan.Reasons)
            text.Item("! ", reason, Ink.Warning);
        if (plan.WaysOut.IsEmpty)
            return;

        text.Say("Ways out, each tried:", Ink.Strong);
        foreach (var way in plan.WaysOut)
            text.Item("> ", Sentences.WayOut(way));
    }

    /// <summary>A row of the list.</summary>
    private sealed record ListRow(int? Step, bool IsFirst, string Text);
}
