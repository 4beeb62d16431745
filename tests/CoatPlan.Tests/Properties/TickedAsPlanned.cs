using CoatPlan.Plans;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Properties;

/// <summary>Whoever works as planned and ticks off every step loses nothing by it: what was done stays in the plan, what is still to do is still to be done, and no later.</summary>
public class TickedAsPlanned
{
    private const int Jobs = 60;

    // The finish may move a little: what is not yet done need not be done in the same order.
    private const int LaterMinutes = 30;

    private static readonly double[] s_shares = [0.5, 0.75, 0.9];

    // What is done between two coats depends on the way that the gap is passed, which may change; this does not.
    private static readonly string[] s_always = ["coat", "heat-cure", "refit", "recheck", "put-away"];

    [Fact]
    public void What_is_ticked_off_as_planned_stays_and_so_does_what_is_still_to_do()
    {
        var ticked = 0;
        foreach (var (seed, drawn) in Draws.Jobs(Jobs))
        {
            if (drawn.Crew.Any(line => line.StartsWith("stations", StringComparison.Ordinal)) || DrawnPlan.Read(drawn.Text(), drawn.Hours).Ready is not { } job)
            {
                continue;
            }

            var plan = Planner.Plan(job, SearchDepth.Quick);
            foreach (double share in plan.InService is null ? [] : s_shares)
            {
                string text = HalfDone.Text(drawn.Text(), plan, Pause(plan, share));
                var ready = DrawnPlan.Read(text, drawn.Hours).Ready!;
                var after = Planner.Replan(ready, plan);
                string said = $"seed {seed}, {share} done\n{text}";

                after.InService.ShouldNotBeNull($"{string.Join('\n', after.Reasons)}\n{said}");
                Work(plan.Steps.Where(step => step.End <= ready.Job.AsOf)).Except(Work(after.Steps.Where(step => step.Done))).ShouldBeEmpty(said);
                Work(plan.Steps.Where(step => s_always.Contains(step.Kind))).Except(Work(after.Steps)).ShouldBeEmpty(said);
                after.Finish!.Value.ShouldBeLessThanOrEqualTo(plan.Finish!.Value.PlusMinutes(LaterMinutes), said);
                ticked++;
            }
        }

        ticked.ShouldBeGreaterThan(Jobs);
    }

    // A moment at which no step is under way: what is begun and not ended cannot be written down.
    private static LocalDateTime Pause(Plan plan, double share) =>
        plan.Steps.Select(step => step.End).Order().Skip((int)(share * (plan.Steps.Length - 1))).First(now => !plan.Steps.Any(step => step.Start < now && now < step.End));

    private static IEnumerable<(string Kind, int? Layer, int? Coat, string? Surface, int Time)> Work(IEnumerable<PlanStep> steps) => steps
        .SelectMany(step => step.Surfaces.Cast<string?>().DefaultIfEmpty(null).Select(surface => (step.Kind, step.Layer, step.Coat, Surface: surface)))
        .GroupBy(each => each)
        .SelectMany(same => same.Select((each, time) => (each.Kind, each.Layer, each.Coat, each.Surface, time)));
}
