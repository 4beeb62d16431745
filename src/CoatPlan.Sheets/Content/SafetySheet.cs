using System.Globalization;
using CoatPlan.Plans;

namespace CoatPlan.Sheets.Content;

/// <summary>The masking and safety sheet: a page for the wall.</summary>
public static class SafetySheet
{
    /// <summary>What the sheet says.</summary>
    /// <param name="plan">The plan.</param>
    public static Sheet Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var words = new PlanWords(plan);
        return new Sheet(
            "masking-and-safety",
            "Masking & safety",
            plan.Job,
            [
                new Heading("Breathe through"),
                new Notice(plan.Respirator.Kind),
                new Bullets(plan.Respirator.Why),
                .. Masking(plan, words),
                new Columns([.. Air(plan, words), .. Tape(plan, words), .. LabelWords(plan), .. Cautions(plan)]),
                .. Deferral.Of(plan),
            ]);
    }

    private static IEnumerable<Block> Air(Plan plan, PlanWords words)
    {
        yield return new Heading("Air");
        var lines = ImmutableArray.CreateBuilder<string>();
        lines.Add(plan.Air.RoomM3 is { } room
            ? $"Room {words.Room(room)}, exhaust {words.Flow(plan.Air.ExhaustM3PerMin)}, mixing factor {plan.Air.Mixing.ToString("0.#", CultureInfo.InvariantCulture)}."
            : "Work outdoors: vapour does not gather in a room; stay upwind of the spray.");
        if (Worst(plan, step => step.MixtureRatio) is { } breath)
            lines.Add($"Highest computed share of the exposure limits: {PlanWords.Percent(breath.MixtureRatio)} ({OverOrUnder(breath.MixtureRatio)} the limit), during “{TitleOf(plan, breath)}”.");
        if (Worst(plan, step => step.LelRatio) is { } fire)
            lines.Add($"Highest computed share of the lower explosive limit: {PlanWords.Percent(fire.LelRatio)}, during “{TitleOf(plan, fire)}”.");
        lines.AddRange(Purge(plan));

        if (plan.Air.ExhaustForLimitM3PerMin is { } forLimit)
            lines.Add(forLimit > 0 ? $"Exhaust that would keep the computed air under the exposure limits: {words.Flow(forLimit)}." : "The computed air stays under the exposure limits even without exhaust.");
        if (plan.Air.ExhaustForLelM3PerMin is { } forLel)
            lines.Add(forLel > 0 ? $"Exhaust that would keep it under 10 % of the lower explosive limit: {words.Flow(forLel)}." : "It stays under 10 % of the lower explosive limit even without exhaust.");
        lines.AddRange(plan.Air.Notes);
        yield return new Bullets(lines.ToImmutable());
    }

    // After a coat that others follow the exhaust runs on for them too: what is waited for at the end is the purge of the last one.
    private static IEnumerable<string> Purge(Plan plan)
    {
        var last = LastOfSessions(plan);
        if (last.FirstOrDefault(coat => coat.PurgeMin is null) is { } never)
            yield return $"After “{TitleOf(plan, never)}” the computed air does not come under the exposure limits with this exhaust: nobody goes in without the respirator.";
        if (last.MaxBy(coat => coat.PurgeMin) is not { PurgeMin: { } purge } longest)
            yield break;

        yield return purge > 0
            ? $"Keep the exhaust running from the first coat of a session until {PlanWords.Minutes(Math.Ceiling(purge))} after its last, at the longest (“{TitleOf(plan, longest)}”); nobody goes in without the respirator before."
            : "The computed air is under the exposure limits as soon as the last coat of a session ends.";
    }

    // A session lasts as long as each coat begins before the vapour of those before it is gone.
    private static ImmutableArray<PlanAirStep> LastOfSessions(Plan plan)
    {
        var coats = plan.Steps
            .Join(plan.Air.ByStep, step => step.Id, air => air.Step, (Step, Air) => (Step, Air), StringComparer.Ordinal)
            .OrderBy(coat => coat.Step.End)
            .ToArray();
        return
        [
            .. coats
                .Where((coat, index) => !coats.Skip(index + 1).Any(later => coat.Air.PurgeMin is not { } purge || later.Step.Start < coat.Step.End.PlusMinutes((long)Math.Ceiling(purge))))
                .Select(coat => coat.Air),
        ];
    }

    private static IEnumerable<Block> Masking(Plan plan, PlanWords words)
    {
        if (plan.Masks.IsEmpty)
            yield break;

        yield return new Heading("Mask");
        var film = plan.Masks.Any(mask => mask.AreaM2 is not null);
        ImmutableArray<Column> columns = [new Column("On", 2), new Column("What", 3), new Column("Kind", 2), new Column("Tape", 1, true)];
        yield return new Grid(
            film ? columns.Add(new Column("Film", 1, true)) : columns,
            [.. plan.Masks.Select(mask => film ? Row(mask, words).Add(mask.AreaM2 is { } area ? words.Area(area) : "") : Row(mask, words))]);
    }

    private static ImmutableArray<string> Row(PlanMask mask, PlanWords words) =>
        [words.Names([mask.Surface]), mask.What, mask.Kind ?? "", mask.EdgeM is { } edge ? words.Length(edge) : ""];

    private static IEnumerable<Block> Tape(Plan plan, PlanWords words)
    {
        var tape = TapeTimes(plan, words).ToImmutableArray();
        if (tape.IsEmpty)
            yield break;

        yield return new Heading("Tape: pull it back on itself");
        yield return new Bullets(tape);
    }

    // Stations whose tape goes on and comes off at the same time share a line.
    private static IEnumerable<string> TapeTimes(Plan plan, PlanWords words) =>
        plan.Steps.Where(step => step.Batch is not null).GroupBy(step => (step.Batch, step.Station)).SelectMany(group => Taped([.. group], words))
            .GroupBy(tape => (tape.On, tape.Off, tape.What))
            .OrderBy(same => same.Key.On)
            .Select(same => $"{StationWords.After(same.Key.What, same.Select(tape => tape.Station))}: on {PlanWords.Moment(same.Key.On)}, off {PlanWords.Moment(same.Key.Off)}.");

    private static IEnumerable<(string What, int? Station, LocalDateTime On, LocalDateTime Off)> Taped(ImmutableArray<PlanStep> steps, PlanWords words)
    {
        PlanStep? on = null;
        foreach (var step in steps)
        {
            if (step.Kind is "mask" or "remask")
                on = step;
            else if (step.Kind == "unmask" && on is not null)
                yield return (words.Names(step.Surfaces), step.Station, on.Start, step.Start);
        }
    }

    private static IEnumerable<Block> LabelWords(Plan plan)
    {
        var said = plan.Labels.Where(label => !label.LabelSays.IsEmpty || !label.Hazards.IsEmpty).ToArray();
        if (said.Length == 0)
            yield break;

        yield return new Heading("The labels");
        yield return new Bullets([.. said.Select(Line)]);

        static string Line(PlanLabel label)
        {
            var hazards = label.Hazards.IsEmpty ? "" : $" [{string.Join(", ", label.Hazards)}]";
            var says = label.LabelSays.IsEmpty ? " Read its label and data sheet before opening it." : $" “{string.Join(" ", label.LabelSays)}”";
            return $"{label.Name}{hazards}:{says}";
        }
    }

    private static IEnumerable<Block> Cautions(Plan plan)
    {
        if (plan.Cautions.Length < 2)
            yield break;

        yield return new Heading("Mind");
        yield return new Bullets([.. plan.Cautions.SkipLast(1).Where(caution => !WorkSheet.IsForVehicle(caution)).Select(CautionLine.Of), CautionLine.Legend]);
    }

    private static PlanAirStep? Worst(Plan plan, Func<PlanAirStep, double> of) => plan.Air.ByStep.MaxBy(of);

    private static string OverOrUnder(double ratio) => ratio > 1 ? "over" : "under";

    private static string TitleOf(Plan plan, PlanAirStep air) => plan.Steps.FirstOrDefault(step => step.Id == air.Step)?.Title ?? air.Step;
}
