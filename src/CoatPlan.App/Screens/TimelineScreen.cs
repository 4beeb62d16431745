using CoatPlan.App.Desk;
using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Plans;

namespace CoatPlan.App.Screens;

/// <summary>
/// The days one under the other, each with its hours across: who works when, what dries meanwhile, when a coat may start, how warm and damp it is.
/// The same hour stands in the same column on every day, so that a Sunday can be compared with its Saturday.
/// </summary>
internal static class TimelineScreen
{
    private const int HoursInDay = 24;

    private const int LabelWidth = 8;

    private const int DetailRows = 4;

    private const int HeightForAir = 26;

    private const int MostLanes = 3;

    private const int RowsBesideWork = 7;

    private const int AirRows = 3;

    private const int HourWidth = 3;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="desk">The desk.</param>
    public static void Draw(Canvas canvas, JobDesk desk)
    {
        if (desk.Plan is not { } plan || Days(plan) is not { Count: > 0 } days)
            return;

        var lanes = new Lanes(
            TimelineLanes.Work(plan, desk.Step), TimelineLanes.Waits(plan, desk.Step), TimelineLanes.Windows(plan, desk.Step), TimelineLanes.Stations(plan), canvas.Height >= HeightForAir);
        var chosenDay = Math.Max(0, days.IndexOf(desk.Step?.Start.Date ?? days[0]));
        lanes = lanes with { AirOn = days[chosenDay], Most = Math.Max(MostLanes, canvas.Height - DetailRows - RowsBesideWork) };
        var (firstDay, rows) = Shown(days, chosenDay, lanes, canvas.Height - DetailRows - 1);
        var scale = Scale.For(canvas.Width - LabelWidth, desk.Zoom, desk.Step);
        var y = 0;
        for (var at = firstDay; at < days.Count && y + RowsOf(days[at], lanes) <= rows; at++)
        {
            Day(canvas, y, days[at], plan, desk, lanes, scale);
            y += RowsOf(days[at], lanes);
        }

        if (days.Count > 1 && (firstDay > 0 || y < days.Sum(day => RowsOf(day, lanes))))
            canvas.FieldRight(0, canvas.Height - DetailRows - 1, canvas.Width, $"{Keys.NameOf(Word.Up)} and {Keys.NameOf(Word.Down)} for the other days", Ink.Quiet);
        Detail(canvas, canvas.Height - DetailRows, desk, plan);
    }

    private static List<LocalDate> Days(Plan plan)
    {
        if (plan.Steps.IsEmpty)
            return [];

        var first = plan.Steps.Min(step => step.Start).Date;
        var last = plan.Steps.Max(step => step.End).Date;
        return [.. Enumerable.Range(0, Period.DaysBetween(first, last) + 1).Select(first.PlusDays)];
    }

    private static (int FirstDay, int Rows) Shown(List<LocalDate> days, int chosen, Lanes lanes, int rows)
    {
        // As many days before the chosen one as leave it whole on the screen.
        var first = chosen;
        var used = RowsOf(days[chosen], lanes);
        while (first > 0 && used + RowsOf(days[first - 1], lanes) <= rows)
        {
            first--;
            used += RowsOf(days[first], lanes);
        }

        return (first, Math.Max(rows, RowsOf(days[chosen], lanes)));
    }

    private static int RowsOf(LocalDate day, Lanes lanes) =>
        1 + lanes.Works(day) + Lanes.Count(lanes.Waits, day) + Lanes.Count(lanes.Windows, day) + (lanes.ShowsAir(day) ? AirRows : 0);

    private static void Day(Canvas canvas, int y, LocalDate day, Plan plan, JobDesk desk, Lanes lanes, Scale scale)
    {
        Ruler(canvas, y++, day, desk, scale);
        y = Bars(canvas, y, day, lanes.Work, lanes.Works(day), lanes.Label, scale, plan);
        y = Bars(canvas, y, day, lanes.Waits, Lanes.Count(lanes.Waits, day), static lane => lane == 0 ? "dries" : "", scale, null);
        y = Bars(canvas, y, day, lanes.Windows, Lanes.Count(lanes.Windows, day), static lane => lane == 0 ? "window" : "", scale, null);
        if (!lanes.ShowsAir(day))
            return;

        var units = desk.Job?.Units ?? PrintUnits.Us;
        var degrees = units == PrintUnits.Metric ? "°C" : "°F";
        Numbers(canvas, y, day, plan, scale, $"air {degrees}", at => at.AirC, units);
        Numbers(canvas, y + 1, day, plan, scale, "metal", at => at.SurfaceC, units);
        Numbers(canvas, y + 2, day, plan, scale, "dew pt", at => at.DewPointC, units);
    }

    private static void Ruler(Canvas canvas, int y, LocalDate day, JobDesk desk, Scale scale)
    {
        canvas.Field(0, y, LabelWidth - 1, BriefDay(day), Ink.Strong);
        for (var hour = scale.FirstHour; hour < HoursInDay; hour++)
        {
            if (scale.ColumnOf(hour * 60) + 2 <= scale.Columns)
                canvas.Write(LabelWidth + scale.ColumnOf(hour * 60), y, $"{hour:00}", Ink.Quiet);
        }

        if (desk.Step is { } step && step.Start.Date == day && scale.ColumnOf(MinuteOf(step.Start, day)) is >= 0 and var column && column < scale.Columns)
            canvas.Write(LabelWidth + column, y, "▼", Ink.Strong);
    }

    // The month has no room.
    private static string BriefDay(LocalDate day) => string.Join(' ', Clock.BriefDay(day).Split(' ').Take(2));

    private static int Bars(Canvas canvas, int y, LocalDate day, ImmutableArray<TimelineBar> bars, int count, Func<int, string> label, Scale scale, Plan? hours)
    {
        for (var lane = 0; lane < count; lane++)
        {
            canvas.Write(0, y + lane, label(lane), Ink.Quiet);
            if (hours is not null)
                Closed(canvas, y + lane, day, hours, scale);
            foreach (var bar in bars.Where(bar => bar.Lane == lane && Touches(bar, day)))
                Bar(canvas, y + lane, day, bar, scale);
        }

        return y + count;
    }

    private static void Closed(Canvas canvas, int y, LocalDate day, Plan plan, Scale scale)
    {
        for (var column = 0; column < scale.Columns; column++)
        {
            var (from, to) = scale.MinutesOf(column);
            var open = plan.OpenHours.Any(span => MinuteOf(span.From, day) < to && MinuteOf(span.To, day) > from);
            if (!open)
                canvas.Write(LabelWidth + column, y, "·", Ink.Closed);
        }
    }

    private static void Bar(Canvas canvas, int y, LocalDate day, TimelineBar bar, Scale scale)
    {
        var from = Math.Max(0, scale.ColumnOf(MinuteOf(bar.From, day)));
        var to = Math.Min(scale.Columns, Math.Max(scale.ColumnAfter(MinuteOf(bar.To, day)), from + 1));
        if (from >= scale.Columns || to <= from)
            return;

        var text = new string(bar.Glyph, to - from);
        if (bar.Glyph == '=')
            text = to - from == 1 ? "|" : $"[{text[2..]}]";
        if (bar.Text.Length > 0 && bar.Text.Length + 2 <= to - from)
            text = $"{bar.Glyph}{bar.Text}{text[(bar.Text.Length + 1)..]}";
        canvas.Write(LabelWidth + from, y, text, bar.Chosen ? Ink.ChosenCell : bar.Ink);
    }

    // A figure under each hour where its column has room for one, under every second or later hour elsewhere.
    private static void Numbers(Canvas canvas, int y, LocalDate day, Plan plan, Scale scale, string label, Func<PlanAirAt, double> celsius, PrintUnits units)
    {
        canvas.Write(0, y, label, Ink.Quiet);
        var free = 0;
        foreach (var at in plan.AirHours.Where(at => at.At.Date == day))
        {
            var column = scale.ColumnOf(MinuteOf(at.At, day));
            var number = Written.Temperature(celsius(at), units)[..^3].TrimEnd();
            if (column < free || column + number.Length > scale.Columns)
                continue;

            canvas.Write(LabelWidth + column, y, number);
            free = column + Math.Max(number.Length + 1, HourWidth);
        }
    }

    private static void Detail(Canvas canvas, int y, JobDesk desk, Plan plan)
    {
        canvas.Field(0, y, canvas.Width, "▒▓ work ░ dusty work █ spraying ~ dries [=] a coat may start · nobody works", Ink.Quiet);
        if (desk.Step is not { } step)
            return;

        var units = desk.Job?.Units ?? PrintUnits.Us;
        canvas.Field(0, y + 1, canvas.Width, $"▼ {Clock.DayAndTime(step.Start)}-{Clock.Time(step.End)} {Sentences.Named(plan, step)}", Ink.Strong);
        var slack = step.SlackMin == 0 && !step.Done ? "no slack; " : "";
        var latest = step.LastSafeStart is { } last ? $"last safe start {Clock.MomentSeenFrom(last, step.Start.Date)}{Sentences.Then(step)}" : Sentences.AirOf(step, units);
        canvas.Field(0, y + 2, canvas.Width, $"  {slack}{latest}");
        canvas.Field(0, y + 3, canvas.Width, $"  {Before(plan, step)}");
    }

    private static string Before(Plan plan, PlanStep step) =>
        plan.Idle.FirstOrDefault(idle => idle.To == step.Start && idle.Station == step.Station) is { } idle ? $"idle before: {Sentences.IdleOf(idle)}"
        : step.WaitsFor.Length > 0 ? step.WaitsFor
        : step.Why;

    private static bool Touches(TimelineBar bar, LocalDate day) =>
        bar.From < day.PlusDays(1).AtMidnight() && bar.To > day.AtMidnight();

    private static long MinuteOf(LocalDateTime at, LocalDate day) => Period.Between(day.AtMidnight(), at, PeriodUnits.Minutes).Minutes;

    private sealed record Lanes(ImmutableArray<TimelineBar> Work, ImmutableArray<TimelineBar> Waits, ImmutableArray<TimelineBar> Windows, int Stations, bool Air)
    {
        public LocalDate AirOn { get; init; }

        public int Most { get; init; } = MostLanes;

        // The chosen day always has its air; the others where there is room for it.
        public bool ShowsAir(LocalDate day) => day == AirOn || (Air && Work.Any(bar => Touches(bar, day)));

        public int Works(LocalDate day) => Stations == 1 ? Math.Max(1, Count(Work, day)) : Work.Any(bar => Touches(bar, day)) ? Math.Min(Stations, Most) : 1;

        public static int Count(ImmutableArray<TimelineBar> bars, LocalDate day) =>
            Math.Min(bars.Where(bar => Touches(bar, day)).Select(bar => bar.Lane + 1).DefaultIfEmpty(0).Max(), MostLanes);

        public string Label(int lane) => Stations > 1 ? $"stn {lane + 1}" : lane == 0 ? "work" : "";
    }

    /// <summary>Which minute of the day stands in which column.</summary>
    private sealed record Scale(int Columns, int FirstHour, double ColumnsPerMinute)
    {
        public static Scale For(int columns, int zoom, PlanStep? chosen)
        {
            var perHour = Math.Max(2, columns / HoursInDay) << zoom;
            var hours = Math.Min(HoursInDay, Math.Max(1, columns / perHour));
            var middle = chosen?.Start.Hour ?? 12;
            var first = Math.Clamp(middle - (hours / 2), 0, HoursInDay - hours);
            return new Scale(Math.Min(columns, hours * perHour), first, perHour / 60.0);
        }

        public int ColumnOf(long minute) => (int)Math.Floor((minute - (FirstHour * 60)) * ColumnsPerMinute);

        public int ColumnAfter(long minute) => (int)Math.Ceiling((minute - (FirstHour * 60)) * ColumnsPerMinute);

        public (double From, double To) MinutesOf(int column) =>
            ((FirstHour * 60) + (column / ColumnsPerMinute), (FirstHour * 60) + ((column + 1) / ColumnsPerMinute));
    }
}
