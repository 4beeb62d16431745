using CoatPlan.Timetable;

namespace CoatPlan.Tests.Timetable;

/// <summary>What every dated plan keeps, each rule on a job that says only what matters. Source: the contract of the job file and the plan.</summary>
public class RulesOfTheTimetable
{
    [Fact]
    public void Set_up_and_put_away_belong_to_each_span()
    {
        var plan = Planned(hours: "Fri-Sun: 08:00-12:00", crew: "set-up: 20 min, put-away: 15 min");

        plan.Steps.ShouldAllBe(step => step.Start.TimeOfDay >= new LocalTime(8, 20) && step.End.TimeOfDay <= new LocalTime(11, 45));
    }

    [Fact]
    public void A_date_without_work_beats_the_days_of_the_week()
    {
        var plan = Planned(hours: "Fri-Sun: 08:00-10:00, 2027-05-15: none");

        plan.Steps.ShouldContain(step => step.Start.Date == new LocalDate(2027, 5, 16));
        plan.Steps.ShouldNotContain(step => step.Start.Date == new LocalDate(2027, 5, 15));
    }

    [Fact]
    public void A_span_over_midnight_is_one_span()
    {
        var plan = Planned(hours: "Fri: 20:00-04:00");

        plan.Steps.ShouldContain(step => step.End > new LocalDateTime(2027, 5, 15, 0, 0) && step.End <= new LocalDateTime(2027, 5, 15, 4, 0));
        plan.Steps.ShouldAllBe(step => step.Start.TimeOfDay >= new LocalTime(20, 0) || step.Start.TimeOfDay < new LocalTime(4, 0));
    }

    [Fact]
    public void A_coat_is_never_broken_at_the_end_of_a_span()
    {
        var plan = Planned(hours: "Fri-Sun: [08:00-09:00, 09:30-10:30, 11:00-12:00]", layers: "{product: black, coats: 3}");

        plan.Steps.Where(step => step.Kind == "coat").ShouldAllBe(step => Period.Between(step.Start, step.End, PeriodUnits.Minutes).Minutes == (long)step.HandsMin);
    }

    [Fact]
    public void Tape_comes_off_and_goes_on_again_where_a_gap_outlasts_it()
    {
        // One coat a day in 40-minute days: each gap takes the window after 48 h, and tape may stay 24 h.
        var plan = Planned(hours: "Mon-Sun: 08:00-08:40", layers: "{product: black, coats: 2}", surface: ", mask: [{what: thread, kind: thread, edge: 1 ft}]");

        plan.Steps.Count(step => step.Kind == "unmask").ShouldBe(2);
        plan.Steps.Count(step => step.Kind == "remask").ShouldBe(1);
        var on = plan.Steps.Single(step => step.Kind == "remask");
        plan.Steps.Last(step => step.Kind == "unmask").End.ShouldBeLessThanOrEqualTo(on.Start.PlusHours(24));
    }

    [Fact]
    public void Outdoors_nothing_is_wiped_for_a_coat_in_rain()
    {
        var rain = new HandJob
        {
            Place = "outdoors: true",
            Weather = "hours: forecast.csv",
            Forecast = "time,air °F,humidity %,wind mph,rain mm\n2027-05-14 00:00,70,50,2,0\n2027-05-14 08:30,70,50,2,0\n2027-05-14 09:00,70,60,2,3\n2027-05-14 13:00,70,60,2,2\n2027-05-14 14:00,70,50,2,0\n2027-05-20 00:00,70,50,2,0",
        };

        var wiped = rain.Plan().Steps.Where(step => step.Kind is "final-wipe" or "tack").ToArray();

        wiped.ShouldNotBeEmpty();
        wiped.ShouldAllBe(step => step.Start >= new LocalDateTime(2027, 5, 14, 14, 0) || step.End <= new LocalDateTime(2027, 5, 14, 8, 30));
        rain.Plan().Steps.ShouldContain(step => step.WaitsFor.Contains("rain is over", StringComparison.Ordinal));
    }

    [Fact]
    public void A_part_goes_back_on_when_every_layer_of_it_can_be_handled()
    {
        // Primer handled after 6 h, the black over it after 3 h.
        var plan = new HandJob
        {
            Products = ["slow: {package: {net: 12 oz}, covers: 13 ft2, drying: solvent, times: {touch: 25 min, tape: 90 min, handle: 6 h, through: 24 h}, recoat: [10 min-1 h, after 24 h], topcoat: [10 min-1 h, after 24 h], limits: {air: 50-90 °F, surface: 50-90 °F, humidity: 30-80 %}}"],
            Systems = "one: [{product: slow, coats: 1}, {product: black, coats: 1}]",
        }.Plan();

        var refit = plan.Steps.Single(step => step.Kind == "refit");
        var primer = plan.Steps.First(step => step.Kind == "coat");
        refit.Start.ShouldBeGreaterThanOrEqualTo(primer.End.PlusHours(6));
        plan.Surfaces.Single().ReadyAt!.Value.ShouldBeLessThanOrEqualTo(refit.Start);
    }

    [Fact]
    public void Pieces_that_fit_a_span_together_but_not_at_their_distance_are_coated_apart()
    {
        // 40-minute days: a coat of both takes so long that the next can never go on within its day, nor at the same hour a day later.
        var plan = new HandJob
        {
            Hours = "Mon-Fri: 10:00-10:50",
            Crew = "people: 3, set-up: 5 min, put-away: 5 min",
            Products =
            [
                "etch: {preset: etch-primer-aerosol}",
                "primer: {preset: filler-primer-aerosol}",
                "blue: {preset: enamel-aerosol, lightness: mid}",
            ],
            Systems = "one: [{product: etch, coats: 1}, {product: primer, coats: 2}, {product: blue, coats: 2}]",
            Surfaces =
            [
                "{name: Panel, material: steel, finish: bare, condition: [light rust], area: 1.5 ft2, relief: 1, system: one}",
                "{name: Bracket, count: 2, material: steel, finish: bare, area: 0.44 ft2, relief: 1, form: bracket, system: one}",
            ],
        }.Plan(SearchDepth.Quick);

        plan.IsWhole.ShouldBeTrue(string.Join('\n', plan.Reasons));
    }

    [Fact]
    public void Outdoors_nothing_is_wet_in_the_evening_and_at_night()
    {
        var plan = Planned(hours: "Mon-Sun: 05:00-23:00", place: "outdoors: true");

        plan.Steps.Where(step => step.Spray).ShouldAllBe(step => step.Start.TimeOfDay >= new LocalTime(8, 0) && step.End.TimeOfDay <= new LocalTime(19, 0));
    }

    [Fact]
    public void A_batch_has_no_more_pieces_than_the_rack_has_places()
    {
        string[] names = ["One", "Two", "Three", "Four"];
        var plan = new HandJob
        {
            Place = "volume: 4000 ft3, exhaust: 800 cfm, rack: 3",
            Surfaces = [.. names.Select(name => $"{{name: {name}, material: steel, finish: bare, area: 1 ft2, relief: 1, system: one}}")],
        }.Plan(SearchDepth.Quick);

        plan.Reasons.ShouldBeEmpty();
        plan.Steps.Where(step => step.Kind == "coat").Select(step => step.Surfaces.Length).ShouldBe([3, 1], ignoreOrder: true);
    }

    [Fact]
    public void A_step_that_waits_for_hands_names_the_step_that_keeps_them()
    {
        var plan = new HandJob
        {
            Systems = "one: [{product: black, coats: 1}], two: [{product: black, coats: 1}]",
            Surfaces = ["{name: Plate, material: steel, finish: bare, area: 1 ft2, system: one}", "{name: Lid, material: steel, finish: bare, area: 1 ft2, system: two}"],
        }.Plan(SearchDepth.Quick);

        var waiting = plan.Steps.Where(step => step.WaitsFor.StartsWith("Waits for a free pair of hands", StringComparison.Ordinal)).ToArray();

        waiting.ShouldNotBeEmpty();
        waiting.ShouldAllBe(step => plan.Steps.Any(other => other.End == step.Start && step.WaitsFor.Contains($"(“{other.Title}”", StringComparison.Ordinal)));
    }

    [Fact]
    public void Each_station_has_every_step_under_an_id_of_its_own()
    {
        var plan = Planned(crew: "stations: 3");

        plan.Steps.Select(step => step.Id).ShouldBeUnique();
        plan.Steps.GroupBy(step => step.Station).Select(station => station.Count()).Distinct().Count().ShouldBe(1);
        plan.Steps.Select(step => step.Station).Distinct().ShouldBe([1, 2, 3], ignoreOrder: true);
    }

    [Fact]
    public void Dust_waits_for_every_film_and_every_film_for_dust()
    {
        var plan = Planned(crew: "stations: 3", hours: "Fri-Sun: 08:00-18:00");

        foreach (var dusty in plan.Steps.Where(step => step.MakesDust))
            plan.Steps.Where(step => step.Kind == "coat").ShouldAllBe(coat => dusty.End <= coat.Start || coat.End < dusty.Start);
    }

    [Fact]
    public void A_missed_finish_is_a_reason_and_a_warning()
    {
        var plan = Planned(hours: "Fri-Sun: 08:00-18:00", more: "finish-by: 2027-05-14 09:00");

        plan.Reasons.ShouldHaveSingleItem().ShouldContain("finish-by");
        plan.Warnings.ShouldContain(warning => warning.Code == "deadline");
        plan.MeetsWhatWasAsked.ShouldBeFalse();
    }

    /// <summary>Nobody tried more hours or another person here: they may help, and may not.</summary>
    [Fact]
    public void What_would_help_a_missed_finish_is_promised_only_where_it_was_tried()
    {
        var plan = Planned(hours: "Fri-Sun: 08:00-18:00", more: "finish-by: 2027-05-14 09:00");
        var said = plan.Reasons.Append(plan.Warnings.Single(warning => warning.Code == "deadline").Text).ToArray();

        plan.WaysOut.ShouldBeEmpty();
        said.ShouldAllBe(text => text.Contains("or change nothing"));
        said.ShouldAllBe(text => !text.Contains("would bring it in"));
    }

    [Fact]
    public void About_an_hour_lies_between_the_last_coat_and_unmasking_at_70_F()
    {
        // Common practice.
        var plan = Planned(surface: ", mask: [{what: thread, kind: thread, edge: 1 ft}]");

        var coat = plan.Steps.Last(step => step.Kind == "coat");
        plan.Steps.Single(step => step.Kind == "unmask").Start.ShouldBeGreaterThanOrEqualTo(coat.End.PlusMinutes(60));
    }

    [Fact]
    public void A_night_that_began_the_day_before_is_worked_from_the_start_on() =>
        new HandJob { Start = "2027-05-14 00:30", Hours = "Mon-Sun: 22:00-04:00", Crew = "people: 1, set-up: 0 min" }.Plan(SearchDepth.Quick)
            .Steps.Min(step => step.Start).ShouldBe(new LocalDateTime(2027, 5, 14, 0, 30));

    private static Plan Planned(
        string hours = "Fri-Sun: [08:00-12:00, 13:00-18:00]",
        string crew = "set-up: 0 min",
        string place = "volume: 4000 ft3, exhaust: 800 cfm",
        string layers = "{product: black, coats: 2}",
        string surface = "",
        string more = "notes: a rule")
    {
        var job = $$$"""
            coatplan: 1
            job: A rule
            start: 2027-05-14 08:00
            {{{more}}}
            place: { {{{place}}}, weather: {steady: {air: 70 °F, humidity: 50 %} } }
            crew: {people: 1, {{{crew}}}, hours: { {{{hours}}} } }
            products:
              black: {preset: underhood-black-aerosol}
            systems: {s: [ {{{layers}}} ]}
            surfaces:
              - {name: Bracket, material: steel, finish: bare, condition: [light rust], area: 1 ft2, system: s{{{surface}}} }
            """;
        var intake = JobIntake.Read(job, "rule.job.yaml", Trade.Standard, _ => FileText.Unreadable("no forecast is named"));
        intake.Problems.ShouldBeEmpty();
        return Planner.Plan(intake.Ready!, SearchDepth.Quick);
    }
}
