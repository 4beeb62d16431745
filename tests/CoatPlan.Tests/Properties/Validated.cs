using CoatPlan.Timetable;

namespace CoatPlan.Tests.Properties;

/// <summary>Plans drawn jobs and has the validator look at each plan; a failure names the seed and the shortest text that still fails.</summary>
internal static class Validated
{
    public static void Each(IEnumerable<(int Seed, DrawnJob Job)> jobs, SearchDepth depth)
    {
        foreach (var (seed, job) in jobs)
        {
            string text = job.Text();
            var broken = Broken(text, job.Hours, depth);
            if (broken.Count > 0)
            {
                string rule = broken.Keys.Order(StringComparer.Ordinal).First();
                string shortest = Minimal.Of(text, shorter => Broken(shorter, job.Hours, depth).ContainsKey(rule));
                throw new ShouldAssertException($"seed {seed} breaks {rule}\n{string.Join('\n', broken.Values)}\nshortest:\n{shortest}\n{string.Join('\n', Broken(shortest, job.Hours, depth).Values)}");
            }
        }
    }

    public static void EachHalfDone(IEnumerable<(int Seed, DrawnJob Job)> jobs, SearchDepth depth)
    {
        int again = 0;
        foreach (var (seed, job) in jobs.Where(drawn => !drawn.Job.Crew.Any(line => line.StartsWith("stations", StringComparison.Ordinal))))
        {
            string text = job.Text();
            if (DrawnPlan.Of(text, job.Hours, out _, depth) is not { } plan || HalfDone.Text(text, plan.Plan, 0.2 + seed % 7 * 0.1) is not { } halfDone)
            {
                continue;
            }

            again++;
            var broken = Broken(halfDone, job.Hours, depth);
            broken.Values.ShouldBeEmpty($"seed {seed}\n{halfDone}");
        }

        again.ShouldBeGreaterThan(0);
    }

    private static Dictionary<string, string> Broken(string text, string? hours, SearchDepth depth)
    {
        try
        {
            if (DrawnPlan.Of(text, hours, out _, depth) is not { } plan)
            {
                return [];
            }

            return plan.Violations(text, hours).GroupBy(violation => violation.Rule).ToDictionary(group => group.Key, group => string.Join('\n', group));
        }
        catch (Exception error) when (error is not ShouldAssertException)
        {
            // A planner that throws is as wrong as one whose plan breaks a rule, and its job is shortened in the same way.
            return new Dictionary<string, string> { [$"throws {error.GetType().Name}"] = error.ToString() };
        }
    }
}
