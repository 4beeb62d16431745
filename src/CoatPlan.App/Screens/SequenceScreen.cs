using CoatPlan.App.Desk;
using CoatPlan.App.Wording;
using CoatPlan.Plans;

namespace CoatPlan.App.Screens;

/// <summary>The steps day by day; everything about the chosen one beside them where there is room, below them elsewhere.</summary>
internal static class SequenceScreen
{
    private const int WidthForBeside = 110;

    private const int DetailRows = 9;

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
        var listWidth = beside ? canvas.Width * 11 / 20 : canvas.Width;
        var listRows = beside ? canvas.Height : Math.Max(3, canvas.Height - DetailRows - 1);
        var list = new Canvas(listWidth, listRows);
        List(list, desk, plan);
        canvas.Paste(0, 0, list);
        var detail = beside ? new Canvas(canvas.Width - listWidth - 2, canvas.Height) : new Canvas(canvas.Width, canvas.Height - listRows - 1);
        Detail(detail, desk, plan);
        canvas.Paste(beside ? listWidth + 2 : 0, beside ? 0 : listRows + 1, detail);
    }

    private static void List(Canvas canvas, JobDesk desk, Plan plan)
    {
        var rows = Rows(plan);
        var chosenRow = rows.FindIndex(row => row.Step == desk.StepAt);
        var first = Scroll.First(chosenRow, rows.Count, canvas.Height);
        for (var y = 0; y < canvas.Height && first + y < rows.Count; y++)
        {
            var (day, at) = rows[first + y];
            if (at is null)
                canvas.Field(0, y, canvas.Width, Clock.Day(day), Ink.Strong);
            else
                Row(canvas, y, plan, plan.Steps[at.Value], at == desk.StepAt);
        }
    }

    private static List<(LocalDate Day, int? Step)> Rows(Plan plan)
    {
        var rows = new List<(LocalDate, int?)>();
        LocalDate? day = null;
        for (var at = 0; at < plan.Steps.Length; at++)
        {
            var date = plan.Steps[at].Start.Date;
            if (day != date)
                rows.Add((date, null));
            day = date;
            rows.Add((date, at));
        }

        return rows;
    }

    private static void Row(Canvas canvas, int y, Plan plan, PlanStep step, bool chosen)
    {
        const int time = 13;
        const int hands = 9;
        const int titleAt = time + hands + 3;
        var ink = chosen ? Ink.Chosen : Ink.Plain;
        canvas.Field(0, y, canvas.Width, "", ink);
        canvas.Write(0, y, $"{(chosen ? ">" : " ")} {Clock.Time(step.Start)}-{Clock.Time(step.End)}", ink);
        canvas.FieldRight(time + 1, y, hands, Written.Minutes(step.HandsMin), ink);
        canvas.Write(time + hands + 1, y, Mark(step), step.Spray && !chosen ? Ink.Spray : ink);
        var room = canvas.Width - titleAt;
        var titleWidth = room < 50 ? room : room * 3 / 5;
        var station = step.Station is { } number ? $"Station {number}: " : "";
        canvas.Field(titleAt, y, titleWidth, station + step.Title, ink);
        if (titleWidth < room)
            canvas.Field(titleAt + titleWidth + 1, y, room - titleWidth - 1, Sentences.SurfacesOf(plan, step), chosen ? ink : Ink.Quiet);
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

        var units = desk.Job?.Units ?? Jobs.PrintUnits.Us;
        var text = new Reader(canvas, 0);
        text.Say($"{step.Title}: {Sentences.SurfacesOf(plan, step)}", Ink.Strong);
        text.Item("why     ", step.Why);
        foreach (var wait in Sentences.WaitsOf(plan, step))
            text.Item("waits   ", wait);
        if (step.WaitsFor.Length > 0)
            text.Item("timing  ", step.WaitsFor);
        if (step.LastSafeStart is { } last)
            text.Item("latest  ", $"last safe start {Clock.MomentSeenFrom(last, step.Start.Date)}{Sentences.Then(step)}", Ink.Strong);
        text.Item("slack   ", Sentences.SlackOf(step));
        foreach (var idle in plan.Idle.Where(idle => idle.To == step.Start && idle.Station == step.Station))
            text.Item("idle    ", Sentences.IdleOf(idle));
        if (plan.RestPoints.Any(point => point.After == step.Id))
            text.Item("rest    ", "after this step the whole job can rest a week without rework");
        text.Item("air     ", Sentences.AirOf(step, units));
        if (step.Limits is { } limits)
            text.Item("limits  ", Sentences.LimitsOf(limits, units));
        text.Item("marks   ", "* sprays   ~ makes dust   x done", Ink.Quiet);
        if (plan.Reasons.IsEmpty)
            return;

        text.Skip();
        Reasons(text, plan);
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
}
