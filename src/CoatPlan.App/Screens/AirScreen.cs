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
        foreach (var warning in plan.Warnings)
            text.Item("! ", $"{warning.Text} [{warning.Code}]", Ink.Warning);
        if (!plan.Warnings.IsEmpty)
            text.Skip();
        Ratios(page, text, plan, units);
        foreach (var caution in plan.Cautions)
            text.Item("! ", $"{caution.Text} ({caution.Source})");

        LongPage.Show(canvas, page, text.Y, desk);
    }

    private static void Ratios(Canvas page, Reader text, Plan plan, PrintUnits units)
    {
        var air = plan.Air;
        var place = air.RoomM3 is { } room ? $"Room {Written.Room(room, units)}" : "Outdoors";
        text.Say($"{place}, exhaust {Written.AirFlow(air.ExhaustM3PerMin, units)}, mixing factor {Written.Number(air.Mixing, 1)}");
        if (!air.ByStep.IsEmpty)
        {
            Bars(page, text, plan);
            text.Say($"Average over the worst 8 h: {Written.Number(air.TwaMixtureRatio, 2)} of the limit.");
        }

        if (air.ExhaustForLimitM3PerMin is { } forLimit)
            text.Say($"Exhaust that would keep the mixture under its limit: {Written.AirFlow(forLimit, units)}.");
        if (air.ExhaustForLelM3PerMin is { } forLel)
            text.Say($"Exhaust that would keep vapour under 10 % of the lower explosive limit: {Written.AirFlow(forLel, units)}.");
        foreach (var note in air.Notes)
            text.Say(note, Ink.Quiet);
        text.Skip();
    }

    // The limit stands in the same column in every row, so that over and under can be seen without a figure. Each step has a row for its name, so that none is cut.
    private static void Bars(Canvas page, Reader text, Plan plan)
    {
        const int figures = 36;
        var bar = Math.Max(10, page.Width - figures);
        var most = Math.Max(1.25, plan.Air.ByStep.Max(step => step.MixtureRatio));
        var limitAt = Math.Min((int)(bar / most), bar - 1);
        page.Write(0, text.Y, "Solvent mixture at each step; | is its limit", Ink.Strong);
        page.FieldRight(bar, text.Y, figures, "of limit   of LEL         purge", Ink.Quiet);
        text.Skip();
        foreach (var step in plan.Air.ByStep)
        {
            var over = step.MixtureRatio > 1;
            if (plan.Steps.FirstOrDefault(known => known.Id == step.Step) is { } known)
                text.Say($"{Clock.DayAndTime(known.Start)}  {Sentences.Named(plan, known)}");
            var y = text.Y;
            page.Write(0, y, new string(over ? '█' : '▒', Math.Clamp((int)Math.Round(bar * step.MixtureRatio / most), 0, bar)), over ? Ink.Warning : Ink.Hands);
            page.Write(limitAt, y, "|", Ink.Strong);
            var purge = step.PurgeMin is { } minutes ? Written.Minutes(minutes) : "never";
            page.FieldRight(bar, y, figures, $"{(over ? "over " : "under ")}{Written.Number(step.MixtureRatio, 2),5}   {Written.Percent(step.LelRatio),6}   {purge,11}", over ? Ink.Warning : Ink.Plain);
            text.Skip();
        }

        text.Say("LEL: the lower explosive limit, the share of vapour from which air can burn. Purge: how long until the room is clear again.", Ink.Quiet);
    }
}
