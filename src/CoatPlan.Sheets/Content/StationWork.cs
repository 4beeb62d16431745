using CoatPlan.Plans;

namespace CoatPlan.Sheets.Content;

/// <summary>The work of a class for its teacher, by period: what several stations do is told once, with who does it when. The readings are on the handouts.</summary>
internal static class StationWork
{
    public static IEnumerable<Block> Of(Plan plan, PlanWords words)
    {
        foreach (var period in WorkPeriod.Of(plan, plan.Steps))
        {
            yield return new Heading(period.Title);
            foreach (var same in period.Steps.GroupBy(step => (step.Kind, step.Title, step.Batch, step.Layer, step.Coat)))
                yield return Once([.. same], plan, words);
        }
    }

    private static WorkStep Once(ImmutableArray<PlanStep> steps, Plan plan, PlanWords words) => new(
        PlanWords.Span(steps.Min(step => step.Start), steps.Max(step => step.End)),
        $"{steps[0].Title}: {StationWords.Of(steps.Select(step => step.Station))}",
        steps[0].Coat is null ? "" : words.Names(steps[0].Surfaces),
        [.. Times(steps), .. steps.SelectMany(step => WorkSheet.Details(step, plan, words)).Distinct()],
        [])
    {
        Ticks = [.. steps.Select(step => step.Station).OfType<int>().Order().Select(PlanWords.Count)],
        Blanks = [],
    };

    // Nothing is said of times where all stations keep to those in the title.
    private static IEnumerable<string> Times(ImmutableArray<PlanStep> steps)
    {
        var groups = steps.GroupBy(step => (step.Start, step.End, step.LastSafeStart)).ToArray();
        if (groups.Length == 1 && groups[0].Key.LastSafeStart is null)
            yield break;

        foreach (var group in groups)
        {
            var last = group.Key.LastSafeStart is { } safe ? $", last start inside its windows {PlanWords.Moment(safe)}" : "";
            yield return $"{StationWords.Of(group.Select(step => step.Station))}: {PlanWords.Span(group.Key.Start, group.Key.End)}{last}.";
        }
    }
}
