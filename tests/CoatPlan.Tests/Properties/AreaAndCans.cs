using CoatPlan.Timetable;

namespace CoatPlan.Tests.Properties;

/// <summary>What a larger area asks for; how far a plan is searched changes nothing about that.</summary>
public class AreaAndCans
{
    private const int Jobs = 40;

    /// <summary>
    /// Of what is taken up as often: a larger job may be arranged in fewer sessions, each of which clears a nozzle, or in fewer openings of a package whose pot life runs out.
    /// </summary>
    [Fact]
    public void More_area_never_needs_fewer_cans()
    {
        int compared = 0;
        foreach (var (seed, job) in Draws.Jobs(Jobs))
        {
            var small = DrawnPlan.Of(job, depth: SearchDepth.Quick).Plan;
            var large = DrawnPlan.Of(job, areaFactor: 1.4, depth: SearchDepth.Quick).Plan;
            if (!small.MeetsWhatWasAsked || !large.MeetsWhatWasAsked)
            {
                continue;
            }

            foreach (var supply in small.Supplies)
            {
                var larger = large.Supplies.Single(row => row.Product == supply.Product);
                larger.AreaCoatsM2.ShouldBeGreaterThanOrEqualTo(supply.AreaCoatsM2, $"seed {seed}, {supply.Product}\n{job}");
                if (larger.Sessions >= supply.Sessions && !HasPotLife(job, supply.Product))
                {
                    compared++;
                    larger.Cans.ShouldBeGreaterThanOrEqualTo(supply.Cans, $"seed {seed}, {supply.Product}\n{job}");
                }
            }
        }

        compared.ShouldBeGreaterThan(20);
    }

    private static bool HasPotLife(DrawnJob job, string product) =>
        job.Products.Single(line => line.StartsWith($"{product}:", StringComparison.Ordinal)) is var label
        && label.Contains("drying: two-part", StringComparison.Ordinal) && label.Contains("use-within:", StringComparison.Ordinal);
}
