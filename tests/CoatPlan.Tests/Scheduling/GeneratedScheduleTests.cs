using CoatPlan.Scheduling;

namespace CoatPlan.Tests.Scheduling;

public class GeneratedScheduleTests
{
    [Fact]
    public void Every_schedule_of_a_random_network_keeps_every_rule_minute_by_minute()
    {
        var scheduled = 0;
        for (var seed = 0; seed < 150; seed++)
        {
            var network = RandomNetworks.Make(seed);

            var outcome = Scheduler.Schedule(network, new Effort(30, 1000));

            if (outcome.Schedule is { } schedule)
            {
                scheduled++;
                MinuteByMinute.Violations(network, schedule).ShouldBeEmpty($"seed {seed}");
                outcome.LowerBound.ShouldBeLessThanOrEqualTo(schedule.Finish, $"seed {seed}");
            }
            else
            {
                outcome.Blockage.ShouldNotBeNull($"seed {seed}");
            }
        }

        scheduled.ShouldBeGreaterThan(120);
    }

    [Fact]
    public void The_same_network_gives_the_same_schedule()
    {
        var first = Scheduler.Schedule(RandomNetworks.Make(12), Effort.Quick);

        var second = Scheduler.Schedule(RandomNetworks.Make(12), Effort.Quick);

        second.Schedule.ShouldNotBeNull().Placements.ShouldBe(first.Schedule.ShouldNotBeNull().Placements);
    }
}
