using CoatPlan.Timetable;

namespace CoatPlan.Tests.Properties;

/// <summary>A plan that is made at once after a change, from the plan before it: it keeps the contract whatever was changed, and what the change does not touch stays.</summary>
public class PlansAtOnceAfterChanges
{
    private const int Jobs = 60;

    [Fact]
    public void Every_plan_from_the_plan_before_a_change_passes_the_validator()
    {
        var changed = 0;
        foreach (var (seed, drawn) in Draws.Jobs(Jobs))
        {
            if (DrawnPlan.Read(drawn.Text(), drawn.Hours).Ready is not { } job)
            {
                continue;
            }

            var before = Planner.Plan(job, seed % 20 == 0 ? SearchDepth.Full : SearchDepth.Quick);
            foreach (string text in Changes(drawn, before))
            {
                if (DrawnPlan.Read(text, drawn.Hours).Ready is not { } after)
                {
                    continue;
                }

                changed++;
                before = Planner.Replan(after, before);
                new DrawnPlan(before, PlanJson.Write(before)).Violations(text, drawn.Hours).ShouldBeEmpty($"seed {seed}\n{text}");
            }
        }

        changed.ShouldBeGreaterThan(2 * Jobs);
    }

    [Theory]
    [MemberData(nameof(ExamplePlans.Files), MemberType = typeof(ExamplePlans))]
    public void A_step_that_is_done_as_planned_leaves_the_rest_of_an_example_where_it_was(string file)
    {
        string text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "presets", "jobs", file));
        var before = Planner.Plan(DrawnPlan.Read(text, null).Ready!);

        var after = Planner.Replan(DrawnPlan.Read(HalfDone.Text(text, before, 0.1)!, null).Ready!, before);

        after.Steps.ShouldContain(step => step.Done);
        after.Finish.ShouldBe(before.Finish);
        after.Steps.Where(step => step.Coat is not null).Select(step => (step.Id, step.Start)).ShouldBe(before.Steps.Where(step => step.Coat is not null).Select(step => (step.Id, step.Start)), ignoreOrder: true);
    }

    // One after the other: the parts are larger, it is colder, some was done, and back to where it began.
    private static IEnumerable<string> Changes(DrawnJob drawn, Plan plan)
    {
        yield return drawn.Text(areaFactor: 1.4);
        yield return drawn.Text(areaFactor: 1.4, colderF: 5);
        if (!drawn.Crew.Any(line => line.StartsWith("stations", StringComparison.Ordinal)) && HalfDone.Text(drawn.Text(), plan, 0.4) is { } begun)
        {
            yield return begun;
        }

        yield return drawn.Text();
    }
}
