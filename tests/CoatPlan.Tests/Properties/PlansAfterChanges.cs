using CoatPlan.Timetable;

namespace CoatPlan.Tests.Properties;

/// <summary>A plan of a changed job is the same to the last byte whether or not the job before the change is at hand, of which it takes what the change left as it is.</summary>
public class PlansAfterChanges
{
    private const int Jobs = 30;

    [Fact]
    public void A_job_that_follows_on_another_is_planned_as_if_it_stood_alone()
    {
        int followed = 0;
        foreach (var (seed, drawn) in Draws.Jobs(Jobs))
        {
            string first = drawn.Text();
            if (Read(first, drawn, null) is not { } before)
            {
                continue;
            }

            var plan = Planner.Plan(before, SearchDepth.Quick);
            foreach (string text in Changes(first, drawn, plan))
            {
                if (Read(text, drawn, null) is not { } alone)
                {
                    continue;
                }

                var following = Read(text, drawn, before)!;
                PlanJson.Write(Planner.Plan(following, SearchDepth.Quick)).ShouldBe(PlanJson.Write(Planner.Plan(alone, SearchDepth.Quick)), $"seed {seed}\n{text}");
                before = following;
                followed++;
            }
        }

        followed.ShouldBeGreaterThan(Jobs);
    }

    // Each by itself and one after the other: some was done, the parts are larger, it is colder, all of it is further down in the file, and back again.
    private static IEnumerable<string> Changes(string first, DrawnJob drawn, Plan plan)
    {
        if (HalfDone.Text(first, plan, 0.3) is { } begun)
        {
            yield return begun;
        }

        if (HalfDone.Text(first, plan, 0.6) is { } further)
        {
            yield return further;
        }

        yield return drawn.Text(areaFactor: 1.4);
        yield return drawn.Text(areaFactor: 1.4, colderF: 5);
        yield return "# A line more.\n" + drawn.Text(areaFactor: 1.4, colderF: 5);
        yield return first;
    }

    private static ReadyJob? Read(string text, DrawnJob drawn, ReadyJob? before) => DrawnPlan.Read(text, drawn.Hours, before).Ready;
}
