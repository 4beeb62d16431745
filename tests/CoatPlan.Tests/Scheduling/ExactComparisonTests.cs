using CoatPlan.Scheduling;

namespace CoatPlan.Tests.Scheduling;

public class ExactComparisonTests
{
    [Fact]
    public void An_exact_solver_agrees_with_bound_and_verdict_and_the_mean_gap_is_under_two_percent()
    {
        var gaps = new List<double>();
        for (var seed = 0; seed < 14; seed++)
        {
            var network = SmallNetworks.Make(seed);

            var outcome = Scheduler.Schedule(network, new Effort(200, 5000));

            var optimum = ExactOptimum.Of(network, outcome.Schedule?.Finish ?? network.Horizon);
            if (outcome.Schedule is not { } schedule)
            {
                optimum.ShouldBeNull($"seed {seed}");
                continue;
            }

            MinuteByMinute.Violations(network, schedule).ShouldBeEmpty($"seed {seed}");
            outcome.LowerBound.ShouldBeLessThanOrEqualTo(optimum.ShouldNotBeNull($"seed {seed}"), $"seed {seed}");
            gaps.Add((double)(schedule.Finish - optimum.Value) / optimum.Value);
        }

        gaps.Count.ShouldBeGreaterThan(8);
        gaps.Average().ShouldBeLessThan(0.02);
    }

    [Fact]
    public void Small_changes_of_order_alone_come_within_two_percent_as_well()
    {
        var gaps = new List<double>();
        for (var seed = 0; seed < 40; seed++)
        {
            var network = SmallNetworks.Make(seed);

            var outcome = Scheduler.Schedule(network, new Effort(300, 0));

            if (outcome.Schedule is { } schedule)
            {
                var exact = Scheduler.Schedule(network, new Effort(300, 5000));
                exact.LowerBound.ShouldBeLessThanOrEqualTo(schedule.Finish, $"seed {seed}");
                gaps.Add((double)(schedule.Finish - exact.LowerBound) / exact.LowerBound);
            }
        }

        gaps.Average().ShouldBeLessThan(0.02);
    }
}
