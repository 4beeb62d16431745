using CoatPlan.App.Desk;
using CoatPlan.App.Wording;
using CoatPlan.Jobs;

namespace CoatPlan.App.Screens;

/// <summary>The air at each step against its limit, the respirator, and what the person must be told.</summary>
internal static class AirScreen
{
    private const int LongestPage = 400;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="desk">The desk.</param>
    public static void Draw(Canvas canvas, JobDesk desk)
    {
        if (desk.Plan is not { } plan)
            return;

        var page = new Canvas(canvas.Width, LongestPage);
        var text = new Reader(page, 0);
        var units = desk.Job?.Units ?? PrintUnits.Us;
        text.Say($"Wear: {plan.Respirator.Kind}", Ink.Strong);
        foreach (var why in plan.Respirator.Why)
            text.Item("  ", why);
        text.Skip();
        Ratios(page, text, plan, units);
        foreach (var caution in plan.Cautions)
            text.Item("! ", $"{caution.Text} ({caution.Source})");
        foreach (var warning in plan.Warnings)
            text.Item("! ", $"{warning.Text} [{warning.Code}]", Ink.Warning);

        var first = Math.Clamp(desk.ReadFrom, 0, Math.Max(0, text.Y - canvas.Height));
        Show(canvas, page, first, text.Y);
    }

    /// <summary>Shows the part of a long page that fits, with a line that says where one is in it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="page">The long page.</param>
    /// <param name="first">Its first row to show.</param>
    /// <param name="rows">Rows that it has.</param>
    public static void Show(Canvas canvas, Canvas page, int first, int rows)
    {
        for (var y = 0; y < canvas.Height && first + y < page.Height; y++)
        {
            for (var x = 0; x < canvas.Width; x++)
                canvas.Write(x, y, page.TextAt(x, first + y), page.InkAt(x, first + y));
        }

        if (rows <= canvas.Height || canvas.Height < 2)
            return;

        var left = rows - first - canvas.Height + 1;
        canvas.Field(0, canvas.Height - 1, canvas.Width, left > 0 ? $"-- {left} more, {Keys.NameOf(Word.Down)} to read on --" : "-- end --", Ink.Quiet);
    }

    private static void Ratios(Canvas page, Reader text, Plan plan, PrintUnits units)
    {
        var air = plan.Air;
        var place = air.RoomM3 is { } room ? $"Room {Written.Room(room, units)}" : "Outdoors";
        text.Say($"{place}, exhaust {Written.AirFlow(air.ExhaustM3PerMin, units)}, mixing factor {Written.Number(air.Mixing, 1)}");
        if (!air.ByStep.IsEmpty)
            Bars(page, text, plan);
        text.Say($"Average over the worst 8 h: {Written.Number(air.TwaMixtureRatio, 2)} of the limit.");
        if (air.ExhaustForLimitM3PerMin is { } forLimit)
            text.Say($"Exhaust that would keep the mixture under its limit: {Written.AirFlow(forLimit, units)}.");
        if (air.ExhaustForLelM3PerMin is { } forLel)
            text.Say($"Exhaust that would keep vapour under 10 % of the lower explosive limit: {Written.AirFlow(forLel, units)}.");
        foreach (var note in air.Notes)
            text.Say(note, Ink.Quiet);
        text.Skip();
    }

    // The limit stands in the same column in every row, so that over and under can be seen without a figure.
    private static void Bars(Canvas page, Reader text, Plan plan)
    {
        const int titleWidth = 28;
        const int figures = 32;
        var bar = Math.Max(10, page.Width - titleWidth - figures);
        var most = Math.Max(1.25, plan.Air.ByStep.Max(step => step.MixtureRatio));
        var limitAt = titleWidth + (int)(bar / most);
        page.Write(titleWidth, text.Y, "solvent mixture; | is its limit", Ink.Quiet);
        page.FieldRight(titleWidth + bar, text.Y, figures, "of limit   of LEL   purge", Ink.Quiet);
        text.Skip();
        foreach (var step in plan.Air.ByStep)
        {
            var y = text.Y;
            var over = step.MixtureRatio > 1;
            var title = plan.Steps.FirstOrDefault(known => known.Id == step.Step)?.Title ?? step.Step;
            page.Field(0, y, titleWidth - 1, title);
            page.Write(titleWidth, y, new string(over ? '█' : '▒', Math.Clamp((int)Math.Round(bar * step.MixtureRatio / most), 0, bar)), over ? Ink.Warning : Ink.Hands);
            page.Write(Math.Min(limitAt, titleWidth + bar - 1), y, "|", Ink.Strong);
            var purge = step.PurgeMin is { } minutes ? Written.Minutes(minutes) : "never";
            page.FieldRight(titleWidth + bar, y, figures, $"{(over ? "over " : "under ")}{Written.Number(step.MixtureRatio, 2),5}   {Written.Percent(step.LelRatio),6}   {purge,5}", over ? Ink.Warning : Ink.Plain);
            text.Skip();
        }
    }
}
