using CoatPlan.Scheduling;

namespace CoatPlan.Tests.Scheduling;

/// <summary>Activities that are done only where a window asks for them, and links that fall silent where they are.</summary>
public class ChosenWorkTests
{
    private const int Day = 1440;

    // Two hours a day, from minute 0.
    private static readonly OpenHours s_mornings = OpenHours.Of(Enumerable.Range(0, 10).Select(day => new Opening(day * Day, (day * Day) + 120)));

    [Fact]
    public void Nothing_is_added_where_the_first_window_can_be_kept()
    {
        var schedule = Of(coatMinutes: 20);

        Start(schedule, "second").ShouldBe(20 + 10);
        IsDone(schedule, "scuff").ShouldBeFalse();
    }

    [Fact]
    public void A_window_missed_over_night_asks_for_its_work()
    {
        // The first ends at minute 70, the second takes as long and no longer fits into the 120 minutes; next morning the hour is over, so it is scuffed, 15 minutes.
        var schedule = Of(coatMinutes: 70);

        IsDone(schedule, "scuff").ShouldBeTrue();
        Start(schedule, "scuff").ShouldBe(Day);
        Start(schedule, "second").ShouldBe(Day + 15);
    }

    [Fact]
    public void A_last_resort_is_done_without_where_something_else_finishes_last()
    {
        // After 40 minutes of prep the second coat no longer fits into the first morning. Scuffed, it ends on the second at minute 65; with the first coat put off
        // to that morning, at 110. Once other work lasts into the third, nobody gains by scuffing.
        var hurried = CoatsAfterPrep(coatMinutes: 50, prepMinutes: 40);
        var other = new Activity { Id = "other", Work = 30, Release = 2 * Day };
        var unhurried = hurried with { Activities = [.. hurried.Activities, other] };

        IsDone(hurried, Found(hurried), "scuff").ShouldBeTrue();
        Found(hurried).Finish.ShouldBe(Day + 65);
        IsDone(unhurried, Found(unhurried), "scuff").ShouldBeFalse();
        Start(unhurried, Found(unhurried), "first").ShouldBeGreaterThanOrEqualTo(Day);

        Schedule Found(Network network) => Scheduler
            .Schedule(network, new Effort(14, 0), schedule => IsDone(network, schedule, "scuff") ? 1 : 0).Schedule.ShouldNotBeNull();

        static bool IsDone(Network network, Schedule schedule, string id) => !schedule.Skipped[IndexOf(network, id)];
    }

    [Fact]
    public void A_limit_falls_silent_where_what_it_limits_was_taken_off()
    {
        // Tape on at minute 0 for 5 minutes must come off within 300 minutes, unless it comes off and on again over the night.
        var network = Coats(70, taped: true);

        var schedule = Scheduler.Schedule(network, Effort.Standard).Schedule.ShouldNotBeNull();

        Start(network, schedule, "off").ShouldBe(75 + 10);
        Start(network, schedule, "on").ShouldBe(75 + 10 + 5);
        Start(network, schedule, "second").ShouldBe(Day + 15);
        Start(network, schedule, "unmask").ShouldBe(Day + 15 + 70);
    }

    [Fact]
    public void What_is_settled_keeps_every_rule_minute_by_minute_and_holds_just_what_was_asked_for()
    {
        var chosen = 0;
        var scheduled = 0;
        for (var seed = 0; seed < 150; seed++)
        {
            var network = WithChoices(RandomNetworks.Make(seed));

            var outcome = Scheduler.Schedule(network, new Effort(30, 0));

            if (outcome.Schedule is not { } schedule)
                continue;

            scheduled++;
            var settled = Settling.Of(network, schedule);
            MinuteByMinute.Violations(settled.Network, settled.Schedule).ShouldBeEmpty($"seed {seed}");
            outcome.LowerBound.ShouldBeLessThanOrEqualTo(schedule.Finish, $"seed {seed}");

            var everAsked = network.Links.SelectMany(link => link.Windows).SelectMany(window => window.Asks).ToHashSet();
            var asked = network.Links.Zip(schedule.WindowInUse).Where(pair => pair.Second >= 0).SelectMany(pair => pair.First.Windows[pair.Second].Asks).ToHashSet();
            settled.Network.Activities.Select(activity => activity.Id).Where(everAsked.Contains).ShouldBe(asked, ignoreOrder: true, $"seed {seed}");
            chosen += asked.Count;
        }

        scheduled.ShouldBeGreaterThan(120);
        chosen.ShouldBeGreaterThan(20);
    }

    // Between coats with a window that closes and one that opens later, the later one asks for two more steps in place of the work it would add.
    internal static Network WithChoices(Network network)
    {
        var activities = network.Activities.ToList();
        var links = new List<Link>();
        foreach (var link in network.Links)
        {
            if (link.Windows.Length < 2)
            {
                links.Add(link);
                continue;
            }

            var coat = activities.Single(activity => activity.Id == link.To);
            var (scuff, wipe) = ("scuff " + link.To, "wipe " + link.To);
            activities.Add(new Activity { Id = scuff, Work = 12, Hours = coat.Hours, Demands = [new Demand("people", 1)], Presences = [new Presence(2)], Avoids = [new Avoidance(1)] });
            activities.Add(new Activity { Id = wipe, Work = 4, Hours = coat.Hours, Demands = [new Demand("people", 1)] });
            links.Add(link with { Windows = [link.Windows[0], link.Windows[1] with { AddedWork = 0, Asks = [scuff, wipe] }] });
            links.Add(Link.After(link.From, scuff, Wait.FromEnd(60)));
            links.Add(Link.After(scuff, wipe));
            links.Add(new Link(wipe, link.To, [new Window(Wait.FromEnd(0), Wait.FromEnd(45))]));
        }

        return network with { Activities = [.. activities], Links = [.. links] };
    }

    private static Schedule Of(int coatMinutes) => Scheduler.Schedule(Coats(coatMinutes, taped: false), Effort.Standard).Schedule.ShouldNotBeNull();

    private static Network Coats(int minutes, bool taped)
    {
        Activity Work(string id, int work) => new() { Id = id, Work = work, Hours = s_mornings, Demands = [new Demand("people", 1)] };
        var later = taped ? new Window(Wait.FromEnd(Day / 2)) { Asks = ["off", "on", "scuff"] } : new Window(Wait.FromEnd(Day / 2)) { Asks = ["scuff"] };
        ImmutableArray<Link> coats =
        [
            new Link("first", "second", [new Window(Wait.FromEnd(10), Wait.FromStart(minutes + 60)), later]),
            Link.After("first", "scuff", Wait.FromEnd(Day / 2)),
            Link.After("scuff", "second"),
        ];
        return new Network
        {
            Activities = [Work("first", minutes), Work("second", minutes), Work("scuff", 15), .. taped ? new[] { Work("mask", 5), Work("off", 5), Work("on", 5), Work("unmask", 5) } : []],
            Resources = [new Resource("people", 1)],
            Links =
            [
                .. coats,
                .. taped
                    ? new[]
                    {
                        Link.After("mask", "first"),
                        Link.After("first", "off", Wait.FromEnd(10)),
                        Link.After("off", "on"),
                        Link.After("on", "second"),
                        Link.After("second", "unmask"),
                        new Link("mask", "second", [new Window(Wait.FromEnd(0), Wait.FromStart(300))]) { Unless = ["on"] },
                        new Link("mask", "unmask", [new Window(Wait.FromEnd(0), Wait.FromStart(300))]) { Unless = ["on"] },
                    }
                    : [],
            ],
            Horizon = 10 * Day,
        };
    }

    private static Network CoatsAfterPrep(int coatMinutes, int prepMinutes)
    {
        var coats = Coats(coatMinutes, taped: false);
        var prep = new Activity { Id = "prep", Work = prepMinutes, Hours = s_mornings, Demands = [new Demand("people", 1)] };
        var gap = coats.Links[0];
        return coats with
        {
            Activities = [prep, .. coats.Activities],
            Links = [Link.After("prep", "first"), gap with { Windows = [gap.Windows[0], gap.Windows[1] with { IsLastResort = true }] }, .. coats.Links.Skip(1)],
        };
    }

    private static int Start(Schedule schedule, string id) => Start(Coats(20, taped: false), schedule, id);

    private static int Start(Network network, Schedule schedule, string id) => schedule.Placements[IndexOf(network, id)].Start;

    private static bool IsDone(Schedule schedule, string id) => !schedule.Skipped[IndexOf(Coats(20, taped: false), id)];

    private static int IndexOf(Network network, string id) => network.Activities.Select(activity => activity.Id).ToList().IndexOf(id);
}
