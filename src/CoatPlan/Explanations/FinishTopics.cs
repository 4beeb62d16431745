using CoatPlan.Plans;

namespace CoatPlan.Explanations;

/// <summary>What can be asked of the plan's ends: when it is finished, in service, and no earlier than when.</summary>
internal static class FinishTopics
{
    /// <summary>Steps that are shown back from the last one: more is no explanation any more.</summary>
    private const int LongestChain = 12;

    public static IEnumerable<Topic> Of(Workings workings, Told told)
    {
        yield return new Topic("finish", ["finish", "end"], () => Finish(workings, told));
        yield return new Topic("inService", ["in service", "service"], () => InService(workings));
        yield return new Topic("lowerBound", ["not before", "lower bound"], () => Told.Sum(
            "no plan of this job can finish before", Told.Time(workings.Dated.LowerBound), null,
            "the later of: each surface in a batch of its own, every wait at its least and every gap in any of its windows; and the work that no batching saves, done in the hours there are",
            "critical path and load, for every way to batch the job",
            Finish(workings, told) with { Inputs = [] }));
    }

    /// <summary>When a surface is ready, as the plan shows it.</summary>
    public static Explanation Ready(Workings workings, PlanSurface surface)
    {
        var last = workings.Dated.Steps.Where(step => step.HandleAt is not null && step.Surfaces.Contains(surface.Id)).MaxBy(step => step.End.PlusMinutes(step.HandleAt!.Value - step.To));
        return Told.Sum(
            $"when {surface.Name} can be handled", Told.Time(surface.ReadyAt), null, "end of its last coat + handling time in the plan's own air", "the label's time, brought to the plan's conditions",
            last is null ? null : Told.Given($"end of “{last.Title}”", Told.Time(last.End), "the timetable"),
            last is null ? null : Told.Given("handling time from there", Told.Minutes(last.HandleAt!.Value - last.To), "the label, brought to the plan's conditions", last.HandleAt.Value - last.To));
    }

    private static Explanation Finish(Workings workings, Told told) => Told.Sum(
        workings.Dated.IsWhole ? "when everything is done and refitted" : "when the part of the job that could be placed is done", Told.Time(workings.Dated.Finish), null, "end of the last step; what it waits for, step by step back", "the timetable", [.. Chain(workings, told)]);

    private static Explanation InService(Workings workings)
    {
        var last = workings.Dated.Steps.Where(step => step.ServiceAt is not null).MaxBy(step => step.ServiceAt);
        return Told.Sum(
            "when the last film reaches service", Told.Time(workings.Dated.InService), null, "the latest of: end of a coat + time to service in the plan's own air", "the label's time, brought to the plan's conditions",
            last is null ? null : Told.Given($"end of “{last.Title}”", Told.Time(last.End), "the timetable"),
            last?.Label is { } label ? Told.Given("the label's time to service", Told.Minutes(label.Times.Service.TotalMinutes), $"label of {label.Name}", label.Times.Service.TotalMinutes) : null);
    }

    /// <summary>The last step, then each step that the one before waits for the longest.</summary>
    private static IEnumerable<Explanation?> Chain(Workings workings, Told told)
    {
        var step = workings.Steps.IsEmpty ? null : workings.Steps.MaxBy(known => known.End);
        for (var i = 0; i < LongestChain && step is not null; i++)
        {
            yield return Told.Sum($"“{step.Title}”", $"{Told.Time(step.Start)} to {Told.Time(step.End)}", null, step.WaitsFor, "the timetable", StepTopics.Hands(workings, told, step) with { Inputs = [] });
            step = Binding(workings, step);
        }
    }

    private static PlanStep? Binding(Workings workings, PlanStep step) => step.After
        .Select(wait => (Earlier: workings.Steps.FirstOrDefault(known => known.Id == wait.Step), wait.LeastMin))
        .Where(pair => pair.Earlier is not null)
        .OrderByDescending(pair => pair.Earlier!.End.PlusMinutes((long)(pair.LeastMin ?? 0)))
        .FirstOrDefault().Earlier
        ?? workings.Steps.Where(known => known.End <= step.Start && known.Id != step.Id).MaxBy(known => known.End);
}
