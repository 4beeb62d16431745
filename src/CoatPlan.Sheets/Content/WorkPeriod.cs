using CoatPlan.Plans;

namespace CoatPlan.Sheets.Content;

/// <summary>A span of the working hours with the steps that begin in it.</summary>
/// <param name="From">When it opens.</param>
/// <param name="To">When it closes.</param>
/// <param name="Steps">The steps, by start.</param>
internal sealed record WorkPeriod(LocalDateTime From, LocalDateTime To, ImmutableArray<PlanStep> Steps)
{
    /// <summary>The period in words, such as "Monday 6 September 2027, 09:00–09:50".</summary>
    public string Title => $"{PlanWords.Day(From.Date)}, {PlanWords.Span(From, To)}";

    /// <summary>The periods of a plan in which something begins; a step outside of the working hours makes one of its own.</summary>
    public static ImmutableArray<WorkPeriod> Of(Plan plan, IEnumerable<PlanStep> steps) =>
    [
        .. steps
            .GroupBy(step => plan.OpenHours.FirstOrDefault(span => span.From <= step.Start && step.Start < span.To) ?? new PlanSpan(step.Start, step.End))
            .Select(group => new WorkPeriod(group.Key.From, group.Key.To, [.. group])),
    ];
}
