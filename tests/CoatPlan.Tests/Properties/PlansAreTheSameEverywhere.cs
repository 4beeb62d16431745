using System.Globalization;

namespace CoatPlan.Tests.Properties;

/// <summary>The same job gives the same bytes.</summary>
public class PlansAreTheSameEverywhere
{
    private const int Jobs = 8;

    [Fact]
    public void The_same_job_gives_the_same_bytes_in_every_culture()
    {
        var culture = CultureInfo.CurrentCulture;
        try
        {
            foreach (var (seed, job) in Draws.Jobs(Jobs))
            {
                CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
                string first = DrawnPlan.Of(job).Json;
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(seed % 2 == 0 ? "tr-TR" : "de-DE");

                DrawnPlan.Of(job).Json.ShouldBe(first, customMessage: $"seed {seed}");
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }
}
