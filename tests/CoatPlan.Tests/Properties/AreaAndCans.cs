namespace CoatPlan.Tests.Properties;

/// <summary>What a larger area asks for.</summary>
public class AreaAndCans
{
    private const int Jobs = 12;

    [Fact]
    public void More_area_never_needs_fewer_cans()
    {
        foreach (var (seed, job) in Draws.Jobs(Jobs))
        {
            var small = DrawnPlan.Of(job).Plan;
            var large = DrawnPlan.Of(job, areaFactor: 1.4).Plan;
            if (!small.MeetsWhatWasAsked || !large.MeetsWhatWasAsked)
            {
                continue;
            }

            foreach (var supply in small.Supplies)
            {
                large.Supplies.Single(row => row.Product == supply.Product).Cans.ShouldBeGreaterThanOrEqualTo(supply.Cans, $"seed {seed}, {supply.Product}\n{job}");
            }
        }
    }
}
