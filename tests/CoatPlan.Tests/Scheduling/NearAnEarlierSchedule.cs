using CoatPlan.Scheduling;

namespace CoatPlan.Tests.Scheduling;

/// <summary>A search that begins from a schedule of the network before a change.</summary>
public class NearAnEarlierSchedule
{
    private static readonly Effort s_few = new(13, 0);

    [Fact]
    public void The_order_of_a_long_search_brings_a_short_one_to_the_same_finish()
    {
        var (searched, kept, behind) = (0, 0, 0);
        for (var seed = 0; seed < 100; seed++)
        {
            var network = seed % 2 == 0 ? RandomNetworks.Make(seed) : ChosenWorkTests.WithChoices(RandomNetworks.Make(seed));
            if (Scheduler.Schedule(network, new Effort(150, 0)).Schedule is not { } found)
            {
                continue;
            }

            var near = Scheduler.Schedule(network, s_few, null, new EarlierSchedule(StartsOf(found), found.Finish)).Schedule.ShouldNotBeNull($"seed {seed}");

            Violations(network, near).ShouldBeEmpty($"seed {seed}");
            searched++;
            kept += near.Finish <= found.Finish ? 1 : 0;
            behind += Scheduler.Schedule(network, s_few).Schedule is not { } alone || alone.Finish > found.Finish ? 1 : 0;
        }

        searched.ShouldBeGreaterThan(70);
        kept.ShouldBe(searched);
        behind.ShouldBeGreaterThan(searched - kept, "without the earlier order more of them are behind");
    }

    [Fact]
    public void An_earlier_schedule_of_something_else_leads_to_a_schedule_all_the_same()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var network = RandomNetworks.Make(seed);
            var draws = new Random(seed);
            ImmutableArray<int?> anything = [.. network.Activities.Select(_ => draws.Next(3) == 0 ? (int?)null : draws.Next(-500, RandomNetworks.Horizon))];

            var near = Scheduler.Schedule(network, s_few, null, new EarlierSchedule(anything, 0)).Schedule;

            if (Scheduler.Schedule(network, s_few).Schedule is not null)
            {
                Violations(network, near.ShouldNotBeNull($"seed {seed}")).ShouldBeEmpty($"seed {seed}");
            }
        }
    }

    [Fact]
    public void An_earlier_schedule_says_when_each_activity_began()
    {
        var network = RandomNetworks.Make(1);

        Should.Throw<ArgumentException>(() => Scheduler.Schedule(network, s_few, null, new EarlierSchedule([0], 0)))
            .Message.ShouldStartWith($"An earlier schedule must say of each of the network's {network.Activities.Length} activities when it began, not of 1.");
    }

    [Fact]
    public void What_is_long_done_does_not_move_the_finish()
    {
        var (ticked, kept) = (0, 0);
        for (var seed = 0; seed < 100; seed++)
        {
            var network = RandomNetworks.Make(seed);
            if (Scheduler.Schedule(network, new Effort(150, 0)).Schedule is not { } found)
            {
                continue;
            }

            // Ticked off at the very minutes: the first third of the time is facts.
            var now = found.Finish / 3;
            var after = network with
            {
                Activities = [.. network.Activities.Select((a, i) => found.Placements[i].End <= now ? a with { Fixed = found.Placements[i] } : a)],
            };

            var near = Scheduler.Schedule(after, s_few, null, new EarlierSchedule(StartsOf(found), found.Finish)).Schedule.ShouldNotBeNull($"seed {seed}");

            Violations(after, near).ShouldBeEmpty($"seed {seed}");
            ticked++;
            kept += near.Finish <= found.Finish ? 1 : 0;
        }

        ticked.ShouldBeGreaterThan(70);
        kept.ShouldBe(ticked);
    }

    private static IEnumerable<string> Violations(Network network, Schedule schedule)
    {
        var settled = Settling.Of(network, schedule);
        return MinuteByMinute.Violations(settled.Network, settled.Schedule);
    }

    private static ImmutableArray<int?> StartsOf(Schedule schedule) =>
        [.. schedule.Placements.Select((at, i) => schedule.Skipped.IsEmpty || !schedule.Skipped[i] ? at.Start : (int?)null)];
}
