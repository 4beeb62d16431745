using CoatPlan.Scheduling;

namespace CoatPlan.Tests.Scheduling;

/// <summary>Small networks worked on paper; the minutes are in the comments.</summary>
public class WorkedByHandTests
{
    [Fact]
    public void Work_that_may_be_broken_pauses_for_lunch_and_other_work_waits_until_after()
    {
        // Open 0–60 and 90–200. 80 minutes from 0: 60 before lunch, 20 after, so to 110. 70 minutes unbroken fit only after lunch: 90–160.
        var hours = OpenHours.Of(new Opening(0, 60), new Opening(90, 200));

        hours.NextFit(0, 80, breakable: true).ShouldBe(new Placement(0, 110));
        hours.NextFit(0, 70, breakable: false).ShouldBe(new Placement(90, 160));
        hours.NextFit(60, 1, breakable: true).ShouldBe(new Placement(90, 91));
        hours.NextFit(131, 70, breakable: true).ShouldBeNull();
    }

    [Fact]
    public void Work_may_fill_an_opening_to_its_last_minute_and_go_on_where_the_next_touches_it()
    {
        var hours = OpenHours.Of(new Opening(90, 200), new Opening(200, 260));

        OpenHours.Of(new Opening(90, 200)).NextFit(90, 110, breakable: false).ShouldBe(new Placement(90, 200));
        hours.NextFit(190, 30, breakable: false).ShouldBe(new Placement(190, 220));
        hours.Openings.ShouldBe([new Opening(90, 260)]);
    }

    [Fact]
    public void A_window_holds_to_its_last_minute()
    {
        // The second may start from 15 to 30 minutes after the first began, and is not there before minute 30.
        var network = new Network
        {
            Activities = [new Activity { Id = "first", Work = 10 }, new Activity { Id = "second", Work = 10, Release = 30 }],
            Links = [new Link("first", "second", [new Window(Wait.FromStart(15), Wait.FromStart(30))])],
            Horizon = 1000,
        };

        Scheduler.Schedule(network, Effort.Standard).Schedule.ShouldNotBeNull().Placements.ShouldBe([new Placement(0, 10), new Placement(30, 40)]);
    }

    [Fact]
    public void A_first_coat_waits_until_the_second_can_follow_within_its_window()
    {
        // Each coat 10 minutes, the second 15 to 30 minutes after the first began. Open 0–20 and 100–200: both must go after 100: 100–110 and 115–125.
        var hours = OpenHours.Of(new Opening(0, 20), new Opening(100, 200));
        var network = new Network
        {
            Activities = [new Activity { Id = "first", Work = 10, Hours = hours }, new Activity { Id = "second", Work = 10, Hours = hours }],
            Links = [new Link("first", "second", [new Window(Wait.FromStart(15), Wait.FromStart(30))])],
            Horizon = 1000,
        };

        var outcome = Scheduler.Schedule(network, Effort.Standard);

        outcome.Verdict.ShouldBe(Verdict.Optimal);
        outcome.Schedule.ShouldNotBeNull().Placements.ShouldBe([new Placement(100, 110), new Placement(115, 125)]);
    }

    [Fact]
    public void A_missed_window_adds_its_rework()
    {
        // As above, but the second coat may also come from 90 minutes on at the price of 5 more: 0–10 and 100–115 beats 115–125.
        var hours = OpenHours.Of(new Opening(0, 20), new Opening(100, 200));
        var network = new Network
        {
            Activities = [new Activity { Id = "first", Work = 10, Hours = hours }, new Activity { Id = "second", Work = 10, Hours = hours }],
            Links = [new Link("first", "second", [new Window(Wait.FromStart(15), Wait.FromStart(30)), new Window(Wait.FromStart(90)) { AddedWork = 5 }])],
            Horizon = 1000,
        };

        var schedule = Scheduler.Schedule(network, Effort.Standard).Schedule.ShouldNotBeNull();

        schedule.Placements.ShouldBe([new Placement(0, 10), new Placement(100, 115)]);
        schedule.WindowInUse.ShouldBe([1]);
    }

    [Fact]
    public void Dust_keeps_clear_of_a_wet_film_on_both_sides()
    {
        // A coat of 10 stays wet 30 more. Sanding of 20 goes first, 0–20; a second sanding that follows the coat waits for 60.
        var network = new Network
        {
            Activities =
            [
                new Activity { Id = "coat", Work = 10, Presences = [new Presence(1, 0, end => end + 30)], Avoids = [new Avoidance(2)] },
                new Activity { Id = "sand", Work = 20, Presences = [new Presence(2)], Avoids = [new Avoidance(1)] },
                new Activity { Id = "again", Work = 5, Presences = [new Presence(2)], Avoids = [new Avoidance(1)] },
            ],
            Links = [Link.After("sand", "coat"), Link.After("coat", "again")],
            Horizon = 1000,
        };

        var schedule = Scheduler.Schedule(network, Effort.Standard).Schedule.ShouldNotBeNull();

        schedule.Placements.ShouldBe([new Placement(20, 30), new Placement(0, 20), new Placement(60, 65)]);
        Scheduler.Look(network, schedule).Reasons[2].ShouldBe(new Reason(ReasonKind.Avoidance) { Other = "coat" });
    }

    [Fact]
    public void A_rack_place_is_kept_until_it_is_given_back()
    {
        // One place, kept from a coat of 10 until 40 after it: the second part may take it at 50.
        var network = new Network
        {
            Activities = [new Activity { Id = "a", Work = 10 }, new Activity { Id = "b", Work = 10 }],
            Resources = [new Resource("rack", 1)],
            Holds = [new Hold("rack", 1, "a", "a", end => end + 40), new Hold("rack", 1, "b", "b", end => end + 40)],
            Horizon = 1000,
        };

        var outcome = Scheduler.Schedule(network, Effort.Standard);

        outcome.Verdict.ShouldBe(Verdict.Optimal);
        outcome.Schedule.ShouldNotBeNull().Finish.ShouldBe(60);
    }

    [Fact]
    public void Holds_that_wait_for_each_other_are_told_and_do_not_hang()
    {
        // The hold keeps one of two places until the use is over, and the use needs both: whoever takes the first can never have the second.
        var network = new Network
        {
            Activities = [new Activity { Id = "take", Work = 1 }, new Activity { Id = "use", Work = 5, Demands = [new Demand("rack", 2)] }],
            Resources = [new Resource("rack", 2)],
            Links = [Link.After("take", "use")],
            Holds = [new Hold("rack", 1, "take", "use")],
            Horizon = 100,
        };

        var outcome = Scheduler.Schedule(network, Effort.Standard);

        outcome.Schedule.ShouldBeNull();
        outcome.Blockage.ShouldNotBeNull().Activity.ShouldBe("use");
    }

    [Fact]
    public void Waits_that_contradict_each_other_are_proven_to()
    {
        // b at least 10 after a, and a no earlier than 5 before b.
        var network = new Network
        {
            Activities = [new Activity { Id = "a", Work = 1 }, new Activity { Id = "b", Work = 1 }],
            Links = [Link.After("a", "b", Wait.FromStart(10)), Link.After("b", "a", Wait.FromStart(-5))],
            Horizon = 1000,
        };

        var outcome = Scheduler.Schedule(network, Effort.Draft);

        outcome.Verdict.ShouldBe(Verdict.Infeasible);
        outcome.Blockage.ShouldNotBeNull().Reason.Kind.ShouldBe(ReasonKind.Contradiction);
    }

    [Fact]
    public void A_fact_stays_where_it_was_and_the_rest_follows_it()
    {
        var network = new Network
        {
            Activities = [new Activity { Id = "done", Work = 10, Fixed = new Placement(33, 50) }, new Activity { Id = "next", Work = 5 }],
            Links = [Link.After("done", "next", Wait.FromEnd(7))],
            Horizon = 1000,
        };

        var schedule = Scheduler.Schedule(network, Effort.Draft).Schedule.ShouldNotBeNull();

        schedule.Placements.ShouldBe([new Placement(33, 50), new Placement(57, 62)]);
    }

    [Fact]
    public void A_name_that_is_not_in_the_network_is_the_callers_mistake()
    {
        var network = new Network { Activities = [new Activity { Id = "a" }], Links = [Link.After("a", "b")], Horizon = 10 };

        Should.Throw<ArgumentException>(() => Scheduler.Schedule(network, Effort.Draft)).Message.ShouldContain("b");
    }
}
