using System.Globalization;

namespace CoatPlan.Tests.Properties;

/// <summary>Small jobs in constant air against the least finish that an exact solver finds. COATPLAN_STEADY asks for more of them.</summary>
public class JobsAgainstAnExactSolver
{
    private const int Jobs = 8;

    [Fact]
    public void No_plan_beats_the_bound_and_the_mean_gap_to_the_least_finish_is_under_two_percent()
    {
        var gaps = new List<double>();
        for (int seed = 0; seed < (int.TryParse(Environment.GetEnvironmentVariable("COATPLAN_STEADY"), CultureInfo.InvariantCulture, out int more) ? more : Jobs); seed++)
        {
            var job = SteadyJob.Draw(seed);
            var intake = JobIntake.Read(job.Text, "steady.job.yaml", Trade.Standard, _ => FileText.Unreadable("no forecast is named"));
            intake.Problems.ShouldBeEmpty(job.Text);
            var plan = Planner.Plan(intake.Ready!);
            if (!plan.Reasons.IsEmpty)
                continue;

            int finish = Minute(plan.Finish!.Value), bound = Minute(plan.LowerBound!.Value);
            if (new SteadyOptimum(job, plan).Solve() is not { } least)
                continue;

            bound.ShouldBeLessThanOrEqualTo(least, $"seed {seed}\n{job.Text}");
            finish.ShouldBeGreaterThanOrEqualTo(least, $"seed {seed}\n{job.Text}");
            gaps.Add((double)(finish - least) / least);

            int Minute(LocalDateTime time) => (int)Period.Between(plan.Start, time, PeriodUnits.Minutes).Minutes;
        }

        TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{gaps.Count} jobs, mean gap {gaps.Average():0.0000}, largest {gaps.Max():0.0000}"));
        gaps.Count.ShouldBeGreaterThanOrEqualTo(Jobs / 2);
        gaps.Average().ShouldBeLessThan(0.02);
    }
}
