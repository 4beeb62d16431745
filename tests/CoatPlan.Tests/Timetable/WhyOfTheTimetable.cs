using CoatPlan.Plans;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Timetable;

/// <summary>What a plan says of its idle hours, of what comes after the last safe start of a coat, and of the points where the job can rest.</summary>
public class WhyOfTheTimetable
{
    [Fact]
    public void Between_two_coats_the_idle_minutes_name_the_window_and_when_it_opens()
    {
        var plan = Planned();

        var (first, second) = (Coat(plan, 1), Coat(plan, 2));
        var idle = plan.Idle.Single(stretch => stretch.From == first.End);
        idle.To.ShouldBe(second.Start);
        idle.Why.ShouldContain("recoat window opens");
        idle.Why.ShouldContain(WaitWords.Moment(second.Start));
    }

    [Fact]
    public void A_span_too_short_for_the_next_coat_says_what_it_takes_and_what_is_left()
    {
        // Ten minutes after the first coat the second could begin, but the span is over before it would be done.
        var plan = Planned(hours: "Fri: [08:00-10:15, 11:00-18:00]", area: "9 ft2", prep: "finish: factory paint, condition: [sound]", product: "recoat: after 10 min");

        plan.Idle.ShouldContain(stretch => stretch.To.TimeOfDay == new LocalTime(10, 15) && stretch.Why.Contains("no more than 14 min left", StringComparison.Ordinal));
    }

    [Fact]
    public void A_cold_morning_is_why_nobody_sprays()
    {
        var plan = Planned(weather: "daily: {low: 38 °F, high: 74 °F, dew-point: 30 °F}", hours: "Sat-Sun: [04:00-18:00]", start: "2027-05-15 04:00");

        plan.Idle.ShouldContain(stretch => stretch.Why.Contains("below the label's 50 °F", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_makes_dust_while_a_film_takes_dust()
    {
        var plan = Planned(hours: "Fri-Sun: 08:00-18:00", crew: "stations: 2, set-up: 0 min");

        plan.Idle.ShouldAllBe(stretch => stretch.Why.Length > 0 && stretch.From < stretch.To);
        plan.Idle.Select(stretch => stretch.Station).Distinct().ShouldBe([1, 2], ignoreOrder: true);
    }

    [Fact]
    public void After_the_last_safe_start_the_window_closes_and_the_label_says_what_then()
    {
        var plan = Planned(product: "recoat: [10 min-30 min], missed: scuff");
        var strip = Planned(product: "recoat: [10 min-30 min], missed: strip");
        var later = Planned(product: "recoat: [10 min-30 min, after 24 h]");

        Coat(plan, 2).LastSafeStart.ShouldBe(Coat(plan, 1).Start.PlusMinutes(30));
        Coat(plan, 2).AfterLastSafeStart!.ShouldContain("scuffed");
        Coat(strip, 2).AfterLastSafeStart!.ShouldContain("strip");
        Coat(later, 2).AfterLastSafeStart!.ShouldContain($"the next opens {WaitWords.Moment(Coat(later, 1).End.PlusHours(24))}");
    }

    [Fact]
    public void After_the_last_safe_start_the_span_ends()
    {
        var plan = Planned(hours: "Fri: 08:00-11:00, Sat: 08:00-18:00", product: "recoat: [after 10 min]");

        var coat = plan.Steps.Last(step => step.Kind == "coat" && step.End.Date == new LocalDate(2027, 5, 14));
        coat.LastSafeStart.ShouldBe(new LocalDateTime(2027, 5, 14, 11, 0).PlusMinutes(-(int)coat.HandsMin));
        coat.AfterLastSafeStart!.ShouldContain("Fri 14 May 11:00");
        coat.AfterLastSafeStart!.ShouldContain("Sat 15 May 08:00");
    }

    [Fact]
    public void After_the_last_safe_start_metal_comes_near_the_dew_point_while_the_film_is_wet()
    {
        // The evening cools to 54 °F with a dew point of 55 °F: from some minute on the margin of 3 °C is gone before the film can be touched.
        var plan = Planned(weather: "daily: {low: 54 °F, high: 74 °F, dew-point: 55 °F}", hours: "Fri: 08:00-23:59", start: "2027-05-14 14:30", product: "recoat: [after 10 min], limits: {air: 50-90 °F, humidity: 95 %, above-dew: 3 °C}");

        var coat = plan.Steps.Last(step => step.Kind == "coat");
        coat.LastSafeStart!.Value.ShouldBeGreaterThan(coat.Start);
        coat.AfterLastSafeStart!.ShouldContain("above the dew point");
        coat.AfterLastSafeStart!.ShouldContain("still be wet");
    }

    [Fact]
    public void The_job_rests_where_no_window_closes_and_not_between_a_wipe_and_its_coat()
    {
        var plan = Planned(product: "recoat: [after 24 h]");

        plan.RestPoints.ShouldContain(point => point.After == Coat(plan, 1).Id && point.At == Coat(plan, 1).End);
        plan.RestPoints.ShouldNotContain(point => plan.Steps.Single(step => step.Id == point.After).Kind == "final-wipe");
        plan.RestPoints.ShouldAllBe(point => plan.Steps.All(step => step.End <= point.At || step.Start >= point.At));
    }

    /// <summary>The second coat starts a day after the first ends. A week on top of that is just the last moment at which the window is open; a minute less is too late.</summary>
    [Theory]
    [InlineData(0, true)]
    [InlineData(-1, false)]
    public void The_job_rests_where_its_week_ends_with_the_window(int minutesMore, bool rests)
    {
        var first = Coat(Planned(product: "recoat: after 24 h"), 1);
        var closes = (int)first.HandsMin + (24 * 60) + (7 * 24 * 60) + minutesMore;

        var plan = Planned(product: FormattableString.Invariant($"recoat: 24 h-{closes} min"));

        Coat(plan, 2).Start.ShouldBe(first.End.PlusHours(24));
        plan.RestPoints.Any(point => point.After == first.Id).ShouldBe(rests);
    }

    [Fact]
    public void The_job_does_not_rest_between_coats_whose_window_closes()
    {
        var plan = Planned(product: "recoat: [10 min-30 min]");

        plan.RestPoints.ShouldNotContain(point => point.After == Coat(plan, 1).Id);
    }

    [Fact]
    public void Metal_that_was_cleaned_does_not_rest_bare()
    {
        var plan = Planned();

        var derust = plan.Steps.Single(step => step.Kind == "derust");
        plan.RestPoints.ShouldNotContain(point => point.At >= derust.End && point.At <= Coat(plan, 1).Start);
    }

    [Fact]
    public void The_job_does_not_rest_with_tape_on()
    {
        var plan = Planned(product: "recoat: [after 24 h]", surface: ", mask: [{what: thread, kind: thread, edge: 1 ft}]");

        foreach (var mask in plan.Steps.Where(step => step.Kind is "mask" or "remask"))
        {
            var off = plan.Steps.First(step => step.Kind == "unmask" && step.Start >= mask.End);
            plan.RestPoints.ShouldNotContain(point => point.At >= mask.End && point.At <= off.Start);
        }
    }

    private static PlanStep Coat(Plan plan, int coat) => plan.Steps.Single(step => step.Kind == "coat" && step.Coat == coat);

    private static Plan Planned(
        string weather = "steady: {air: 70 °F, humidity: 50 %}",
        string hours = "Fri-Sun: 08:00-18:00",
        string start = "2027-05-14 08:00",
        string crew = "set-up: 0 min",
        string product = "",
        string area = "1 ft2",
        string prep = "finish: bare, condition: [light rust]",
        string surface = "")
    {
        var own = product.Length > 0 ? ", " + product : "";
        var job = $$$"""
            coatplan: 1
            job: Why
            start: {{{start}}}
            place: { volume: 4000 ft3, exhaust: 800 cfm, weather: { {{{weather}}} } }
            crew: {people: 1, {{{crew}}}, hours: { {{{hours}}} } }
            products:
              black: {preset: underhood-black-aerosol{{{own}}} }
            systems: {s: [ {product: black, coats: 2} ]}
            surfaces:
              - {name: Bracket, material: steel, {{{prep}}}, area: {{{area}}}, system: s{{{surface}}} }
            """;
        var intake = JobIntake.Read(job, "why.job.yaml", Trade.Standard, _ => FileText.Unreadable("no forecast is named"));
        intake.Problems.ShouldBeEmpty();
        return Planner.Plan(intake.Ready!, SearchDepth.Quick);
    }
}
