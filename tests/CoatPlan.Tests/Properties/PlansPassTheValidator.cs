namespace CoatPlan.Tests.Properties;

/// <summary>Every plan of a drawn job keeps the contract; a failure names the seed and the shortest text that still fails.</summary>
public class PlansPassTheValidator
{
    private const int Jobs = 30;

    [Fact]
    public void Every_plan_passes_the_validator()
    {
        foreach (var (seed, job) in Draws.Jobs(Jobs))
        {
            string text = job.Text();
            var broken = Broken(text, job.Hours);
            if (broken.Count > 0)
            {
                string rule = broken.Keys.Order(StringComparer.Ordinal).First();
                string shortest = Minimal.Of(text, shorter => Broken(shorter, job.Hours).ContainsKey(rule));
                throw new ShouldAssertException($"seed {seed} breaks {rule}\n{string.Join('\n', broken.Values)}\nshortest:\n{shortest}\n{string.Join('\n', Broken(shortest, job.Hours).Values)}");
            }
        }
    }

    private static Dictionary<string, string> Broken(string text, string? hours)
    {
        try
        {
            if (DrawnPlan.Of(text, hours, out _) is not { } plan)
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
