namespace CoatPlan.Sheets.Content;

/// <summary>The timeline: one picture of the job by the hours of its days.</summary>
public static class TimelineSheet
{
    /// <summary>What the sheet says.</summary>
    /// <param name="plan">The plan.</param>
    public static Sheet Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new Sheet("timeline", "Timeline", plan.Job, [.. Head(plan), .. Picture(plan), .. Deferral.Of(plan)]) { Shape = SheetShape.Landscape };
    }

    private static IEnumerable<Block> Head(Plan plan)
    {
        if (!plan.Reasons.IsEmpty)
            yield return new Notice("This plan does not meet what was asked.");
        yield return new Paragraph(plan.Steps.IsEmpty ? PlanWords.Ends(plan) : $"From {PlanWords.Day(plan.Steps[0].Start.Date)}. {PlanWords.Ends(plan)}");
    }

    private static IEnumerable<Block> Picture(Plan plan)
    {
        if (plan.Steps.IsEmpty)
            yield break;

        var words = new PlanWords(plan);
        var days = TimelineDays.Of(plan, words);
        var curves = plan.AirHours.SelectMany(one => new[] { one.AirC, one.SurfaceC, one.DewPointC }).DefaultIfEmpty(0).ToArray();
        yield return new Timeline(days, Wide(plan, days), curves.Min(), curves.Max(), words.DegreeUnit);
    }

    private static ImmutableSortedSet<int> Wide(Plan plan, ImmutableArray<TimelineDay> days) =>
    [
        .. days.SelectMany(day => day.Open.Select(span => (span.From, span.To))).Concat(plan.Steps.Where(step => step.Start.Date == step.End.Date).Select(step => (From: step.Start, To: step.End)))
            .SelectMany(span => Enumerable.Range(span.From.Hour, HourAfter(span.From, span.To) - span.From.Hour)),
    ];

    private static int HourAfter(LocalDateTime from, LocalDateTime to) =>
        to.Date > from.Date ? NodaConstants.HoursPerDay : Math.Max(from.Hour + 1, to.Hour + (to.Minute > 0 ? 1 : 0));
}
