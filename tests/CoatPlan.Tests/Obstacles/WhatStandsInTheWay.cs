using CoatPlan.Climate;
using CoatPlan.Obstacles;
using CoatPlan.Plans;
using CoatPlan.Tests.Properties;
using CoatPlan.Tests.Timetable;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Obstacles;

/// <summary>Leaving out what one listed reason speaks of makes the job feasible, and each way out does too.</summary>
public class WhatStandsInTheWay
{
    private const string Weekend = "Sat-Sun: [08:00-12:00, 13:00-18:00]";
    private const string Warm = "steady: {air: 70 °F, humidity: 50 %}";
    private const string Showers = "hours: forecast.csv";

    private static readonly Dictionary<string, string> s_jobs = new(StringComparer.Ordinal)
    {
        ["too cold"] = Job("daily: {low: 30 °F, high: 47 °F, dew-point: 24 °F}"),
        ["too damp"] = Job("daily: {low: 55 °F, high: 62 °F, dew-point: 58 °F}"),
        ["cold and damp"] = Job("daily: {low: 40 °F, high: 48 °F, dew-point: 46 °F}"),
        ["too warm"] = Job("steady: {air: 99 °F, humidity: 40 %}"),
        ["spans too short"] = Job(Warm, hours: "Mon-Fri: 09:00-09:09"),
        ["a window that closes, and strip"] = Job(Warm, black: ", recoat: 5 min-6 min, missed: strip"),
        ["finish-by missed"] = Job(Warm, head: "finish-by: 2027-05-15 12:00"),
        ["only at night, outdoors"] = Job(Warm, hours: "Mon-Sun: 20:00-23:00", place: "outdoors: true"),
        ["rain without end, outdoors"] = Job(Showers, hours: "Mon-Sun: 08:00-18:00", place: "outdoors: true"),
        ["a forecast that ends"] = Job(Showers, hours: "Fri: 08:00-08:30, Mon: 08:00-18:00"),
    };

    public static TheoryData<string> Names => [.. s_jobs.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Leaving_out_any_one_reason_makes_the_job_feasible(string name)
    {
        var ready = Ready(s_jobs[name]);

        var plan = Planner.Plan(ready);

        plan.Obstacles.ShouldNotBeEmpty();
        plan.Reasons.ShouldBe(plan.Obstacles.Select(obstacle => obstacle.What));
        foreach (var obstacle in plan.Obstacles)
            HoldsAsSaid(ready, obstacle);
    }

    [Fact]
    public void So_it_does_for_drawn_jobs()
    {
        foreach (var (seed, drawn) in Draws.Jobs(6))
        {
            var ready = JobIntake.Read(drawn.Text(), "drawn.job.yaml", Trade.Standard, _ => FileText.Of(drawn.Hours ?? "")).Ready!;
            if (Planner.Plan(ready, SearchDepth.Quick).Reasons.IsEmpty)
                continue;

            foreach (var obstacle in Planner.Plan(ready).Obstacles)
                HoldsAsSaid(ready, obstacle, $"seed {seed}: {obstacle.What}");
        }
    }

    [Theory]
    [InlineData("too cold", "air-low", "50 °F")]
    [InlineData("too damp", "above-dew", "dew point")]
    [InlineData("too warm", "air-high", "99 °F")]
    [InlineData("spans too short", "hours", "9 min in one go")]
    [InlineData("a window that closes, and strip", "window", "strip")]
    [InlineData("finish-by missed", "finish-by", "Sat 15 May 12:00")]
    [InlineData("only at night, outdoors", "night", "19:00")]
    [InlineData("rain without end, outdoors", "rain", "rain")]
    [InlineData("a forecast that ends", "forecast-end", "Mon 17 May")]
    public void The_reason_names_the_rule_and_its_figures(string name, string rule, string figure)
    {
        var plan = Planner.Plan(Ready(s_jobs[name]));

        plan.Obstacles.ShouldContain(obstacle => obstacle.Rules.Any(known => known.Rule == rule) && obstacle.What.Contains(figure, StringComparison.Ordinal));
    }

    /// <summary>Three plates, each three hours on the rack, one person, asked for by four in the afternoon.</summary>
    [Theory]
    [InlineData(1, "Only 1 piece has room to hang or lie wet (rack).")]
    [InlineData(2, "2 pieces have room to hang or lie wet (rack).")]
    public void A_rack_too_small_is_named_by_how_many_pieces_have_room(int places, string words)
    {
        string[] names = ["Plate", "Lid", "Tray"];
        var plan = new HandJob
        {
            Place = FormattableString.Invariant($"volume: 4000 ft3, exhaust: 800 cfm, rack: {places}"),
            More = "finish-by: 2027-05-14 16:00",
            Surfaces = [.. names.Select(name => $"{{name: {name}, material: steel, finish: bare, area: 1 ft2, relief: 1, system: one}}")],
        }.Plan();

        plan.Obstacles.ShouldContain(obstacle => obstacle.What.StartsWith(words, StringComparison.Ordinal));
    }

    [Fact]
    public void A_rack_too_small_for_a_surface_gets_the_least_room_that_does()
    {
        var job = new HandJob
        {
            Place = "volume: 4000 ft3, exhaust: 800 cfm, rack: 2",
            Surfaces =
            [
                "{name: Plate, count: 4, material: steel, finish: bare, area: 1 ft2, relief: 1, system: one}",
                "{name: Lid, count: 3, material: steel, finish: bare, area: 1 ft2, relief: 1, system: one}",
            ],
        };

        job.Plan().WaysOut.ShouldContain(way => way.What == "Make room to hang or lay 4 pieces wet (rack).");

        (job with { Place = "volume: 4000 ft3, exhaust: 800 cfm, rack: 3" }).Plan(SearchDepth.Quick).Reasons.ShouldNotBeEmpty();
        (job with { Place = "volume: 4000 ft3, exhaust: 800 cfm, rack: 4" }).Plan(SearchDepth.Quick).Reasons.ShouldBeEmpty();
    }

    [Fact]
    public void One_label_asks_and_two_labels_ask()
    {
        var one = new HandJob { Weather = "steady: {air: 45 °F, humidity: 50 %}" }.Plan();
        var two = Planner.Plan(Ready(s_jobs["too cold"]));

        one.Obstacles.ShouldContain(obstacle => obstacle.What.StartsWith("Black asks for ", StringComparison.Ordinal));
        two.Obstacles.ShouldContain(obstacle => obstacle.What.Contains(" and Etch primer, aerosol ask for ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_cold_garage_gets_the_least_heat_that_does()
    {
        var plan = Planner.Plan(Ready(s_jobs["too cold"]));

        var way = plan.WaysOut.Single(way => way.What.Contains("sealed heater", StringComparison.Ordinal));
        way.What.ShouldContain("50 °F");
        Planner.Plan(Ready(Job("daily: {low: 30 °F, high: 47 °F, dew-point: 24 °F}", place: "volume: 4000 ft3, exhaust: 800 cfm, hold: 50 °F, heater: sealed"))).Reasons.ShouldBeEmpty();
        Planner.Plan(Ready(Job("daily: {low: 30 °F, high: 47 °F, dew-point: 24 °F}", place: "volume: 4000 ft3, exhaust: 800 cfm, hold: 49 °F, heater: sealed")), SearchDepth.Quick).Reasons.ShouldNotBeEmpty();
    }

    [Fact]
    public void Spans_too_short_for_a_coat_get_longer_ones()
    {
        var plan = Planner.Plan(Ready(s_jobs["spans too short"]));

        plan.WaysOut.ShouldContain(way => way.What.Contains("1 h longer", StringComparison.Ordinal));
        Planner.Plan(Ready(Job(Warm, hours: "Mon-Fri: 09:00-10:09")), SearchDepth.Quick).Reasons.ShouldBeEmpty();
    }

    [Fact]
    public void Another_class_is_no_way_out_where_it_fails_the_job_in_its_own_way()
    {
        // Both fail under a two-part topcoat, each for its own reason: the one until it is through, the other for good.
        var plan = new HandJob
        {
            Start = "2027-10-02 08:00",
            More = "finish-by: 2027-10-08 22:00",
            Place = "volume: 62.4 m3, exhaust: 15 m3/min, hold: 18 °C, heater: open, cools-in: 45 min",
            Weather = "daily: {low: 6 °C, high: 14 °C, humidity: 75 %}",
            Hours = "Sat-Sun: [08:00-12:00, 13:00-18:00], Mon-Fri: 18:00-21:00",
            Products = ["rustbond: {preset: moisture-cure-urethane, name: Rust bond, lightness: black}", "top: {preset: urethane-2k-aerosol, name: Top, lightness: black}"],
            Systems = "one: [{product: rustbond, coats: 2}, {product: top, coats: 2}]",
            Surfaces = ["{name: Axle tube, material: steel, finish: unknown, condition: [scaly rust, oily], shape: [{tube: {diameter: 80 mm, length: 1.2 m}}], form: tube, gauge: 6 mm, system: one}"],
        }.Plan();

        plan.Reasons.ShouldNotBeEmpty();
        plan.WaysOut.ShouldNotContain(way => way.What.Contains("high-heat", StringComparison.Ordinal));
    }

    [Fact]
    public void A_missed_finish_gets_the_finish_that_was_found()
    {
        var plan = Planner.Plan(Ready(s_jobs["finish-by missed"]));

        plan.WaysOut.ShouldContain(way => way.Finish == plan.Finish && way.What.Contains("finish-by", StringComparison.Ordinal));
        plan.WaysOut.Where(way => !way.What.Contains("finish-by", StringComparison.Ordinal)).ShouldAllBe(way => way.Finish <= plan.FinishBy);
        plan.Warnings.Single(warning => warning.Code == "deadline").Text.ShouldContain("Its ways out were each tried.");
    }

    [Fact]
    public void A_job_that_can_be_planned_has_neither_obstacle_nor_way_out()
    {
        var plan = Planner.Plan(Ready(Job(Warm)));

        plan.Reasons.ShouldBeEmpty();
        plan.Obstacles.ShouldBeEmpty();
        plan.WaysOut.ShouldBeEmpty();
    }

    // Without its rules there is a plan that meets the rest; of several rules none can be kept.
    private static void HoldsAsSaid(ReadyJob ready, PlanObstacle obstacle, string? said = null)
    {
        var ask = new Ask(ready.Job, ready.Labels, ClimateFigures.Of(ready.Trade.Catalogue), ready.Forecast);
        var known = ObstacleRules.Of(ask).SelectMany(node => node.Rules).ToArray();
        var rules = obstacle.Rules.Select(rule => known.Single(other => other.Code == rule.Rule && other.Product == rule.Product)).ToArray();

        Finish(ask, rules).ShouldBe(obstacle.Finish, said);
        if (rules.Length == 1)
            return;

        foreach (var kept in rules)
            Finish(ask, [.. rules.Where(rule => rule != kept)]).ShouldBeNull($"{kept.Code} of {kept.Product} could be kept: {said}");
    }

    private static LocalDateTime? Finish(Ask ask, ObstacleRule[] without)
    {
        var relaxed = without.Aggregate(ask, (given, rule) => rule.LeftOut(given));
        var climate = PlaceClimate.Of(relaxed.Job.Place, relaxed.Job.Start, relaxed.Figures, relaxed.Forecast);
        return JobImpasse.Plan(relaxed, climate, Trade.Standard).Finish is { } finish && !(finish > relaxed.Job.FinishBy) ? finish : null;
    }

    private static ReadyJob Ready(string job)
    {
        var intake = JobIntake.Read(job, "way.job.yaml", Trade.Standard, _ => FileText.Of(Forecast(job)));
        intake.Problems.ShouldBeEmpty();
        return intake.Ready!;
    }

    // Two days of warm weather, and for the job outdoors rain in every row.
    private static string Forecast(string job)
    {
        var rain = job.Contains("outdoors", StringComparison.Ordinal) ? 1 : 0;
        return "time,air °F,humidity %,wind mph,rain mm\n"
            + string.Concat(Enumerable.Range(0, 80).Select(hour => FormattableString.Invariant($"{new DateTime(2027, 5, 14, 0, 0, 0, DateTimeKind.Unspecified).AddHours(hour):yyyy-MM-dd HH:mm},70,50,3,{rain}\n")));
    }

    private static string Job(string weather, string hours = Weekend, string place = "volume: 4000 ft3, exhaust: 800 cfm", string black = "", string head = "notes: a way") =>
        $$"""
        coatplan: 1
        job: What stands in the way
        start: 2027-05-14 08:00
        {{head}}
        place: { {{place}}, weather: { {{weather}} } }
        crew: {people: 1, hours: { {{hours}} } }
        products:
          black: {preset: underhood-black-aerosol{{black}} }
          etch: {preset: etch-primer-aerosol}
        systems: {s: [{product: etch, coats: 1}, {product: black, coats: 2}]}
        surfaces:
          - {name: Bracket, material: steel, finish: bare, condition: [light rust], area: 4 ft2, system: s}
        """;
}
