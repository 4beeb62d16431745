namespace CoatPlan.Tests.Properties;

/// <summary>What cold does to drying, seen in whole plans.</summary>
public class ColdAndDrying
{
    private const int Jobs = 12;

    [Fact]
    public void A_colder_garage_never_dries_sooner()
    {
        int compared = 0;
        foreach (var (seed, drawn) in Draws.Jobs(Jobs))
        {
            var job = drawn with { Weather = drawn.Weather with { Kind = "steady" }, Place = ["room: {length: 22 ft, width: 20 ft, height: 9 ft}"], Surfaces = [drawn.Surfaces[0]] };
            var warm = Waits(DrawnPlan.Of(job).Plan);
            var cold = Waits(DrawnPlan.Of(job, colderF: 6).Plan);
            foreach (var (wait, least) in warm.Where(pair => cold.ContainsKey(pair.Key)))
            {
                compared++;
                cold[wait].ShouldBeGreaterThanOrEqualTo(least, $"seed {seed}, {wait}\n{job}");
            }
        }

        compared.ShouldBeGreaterThan(20);
    }

    /// <summary>The least waits for a stage of drying, by who waits for what and by what the label says, since a colder job may use another window.</summary>
    private static Dictionary<(string Step, string For, CoatPlan.Plans.PlanStage Stage, double? Label), double> Waits(Plan plan)
    {
        var coats = plan.Steps.Where(step => step.Kind == "coat").Select(step => step.Id).ToHashSet(StringComparer.Ordinal);
        return plan.Steps.SelectMany(step => step.After.Where(wait => coats.Contains(wait.Step) && wait.LeastMin is not null)
            .Select(wait => (Key: (step.Id, wait.Step, wait.Stage, wait.LabelMin), Least: wait.LeastMin!.Value)))
            .GroupBy(wait => wait.Key).ToDictionary(group => group.Key, group => group.Min(wait => wait.Least));
    }
}
