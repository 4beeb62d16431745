using CoatPlan.Scheduling;

namespace CoatPlan.Tests.Scheduling;

public class SlackAndReasonTests
{
    [Fact]
    public void Everything_as_late_as_its_slack_lets_it_be_is_a_schedule_with_the_same_finish()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var network = RandomNetworks.Make(seed);
            if (Scheduler.Schedule(network, new Effort(4, 0)).Schedule is not { } schedule)
            {
                continue;
            }

            var late = new Schedule(Scheduler.LatestPlacements(network, schedule), schedule.WindowInUse);

            MinuteByMinute.Violations(network, late).ShouldBeEmpty($"seed {seed}");
            late.Finish.ShouldBe(schedule.Finish, $"seed {seed}");
            Scheduler.Look(network, schedule).Slack.ShouldAllBe(s => s >= 0);
        }
    }

    [Fact]
    public void An_activity_with_a_reason_cannot_start_a_minute_earlier_and_one_without_can()
    {
        var withReason = 0;
        for (var seed = 0; seed < 40; seed++)
        {
            var network = RandomNetworks.Make(seed);
            if (Scheduler.Schedule(network, new Effort(4, 0)).Schedule is not { } schedule)
            {
                continue;
            }

            var reasons = Scheduler.Look(network, schedule).Reasons;

            for (var i = 0; i < reasons.Length; i++)
            {
                var moved = MinuteEarlier(network, schedule, i);
                var breaks = moved is null || MinuteByMinute.Violations(network, moved).Count > 0;
                breaks.ShouldBe(reasons[i] is not null, $"seed {seed}, {network.Activities[i].Id}: {reasons[i]}");
                withReason += breaks ? 1 : 0;
            }
        }

        withReason.ShouldBeGreaterThan(200);
    }

    private static Schedule? MinuteEarlier(Network network, Schedule schedule, int activity)
    {
        var a = network.Activities[activity];
        var at = schedule.Placements[activity];
        var start = at.Start - 1;
        var open = Enumerable.Range(at.Start, at.End - at.Start).Where(IsOpen).Count();
        var end = start;
        for (var worked = 0; worked < open; end++)
        {
            worked += IsOpen(end) ? 1 : 0;
        }

        return start < 0 ? null : schedule with { Placements = schedule.Placements.SetItem(activity, new Placement(start, end)) };

        bool IsOpen(int minute) => a.Hours is null || a.Hours.Openings.Any(o => o.Opens <= minute && minute < o.Closes);
    }
}
