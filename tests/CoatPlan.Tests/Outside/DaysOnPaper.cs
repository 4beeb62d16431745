using CoatPlan.Plans;
using CoatPlan.Tests.Timetable;

namespace CoatPlan.Tests.Outside;

/// <summary>
/// Small jobs worked on paper in awkward hours, rooms and weathers. One bare steel plate of 1 ft² = 0.0929 m² takes, in minutes × 1.15 for rest, rounded up:
/// </summary>
/// <remarks>
/// <code>
/// photograph     10 × 1.15                      = 11.5   → 12   08:00-08:12
/// disconnect      5 × 1.15                      =  5.75  →  6   08:12-08:18
/// strip down     12 × 1.4 × 1.15                = 19.3   → 20   08:18-08:38
/// solvent clean  (4.3 × 0.0929 + 3) × 1.15      =  3.9   →  4   08:38-08:42, flashes off for 10 min
/// abrade         (22 × 0.0929 + 3) × 1.15       =  5.8   →  6   08:52-08:58
/// blow off       the least                                  3   08:58-09:01
/// final wipe     as the solvent clean                       4   09:01-09:05, flashes off for 10 min
/// tack           the least                                  3   09:15-09:18
/// coat           (8.6 × 0.0929 + 3) × 1.15 + 3 × 1.15 = 7.8  8   09:18-09:26
/// refit          as strip down                             20   from 3 h after: 12:26
/// recheck        20 × 1.15                                 23
/// put away       15 × 1.15                      = 17.3  → 18
/// </code>
/// </remarks>
public class DaysOnPaper
{
    private const string Dry = "times: {touch: 25 min, tape: 90 min, handle: 3 h, through: 24 h}, limits: {air: 50-90 °F, surface: 50-90 °F}}";

    private const string Light =
        "light: {package: {net: 12 oz}, covers: 13 ft2, drying: solvent, lightness: light, times: {touch: 20 min, tape: 80 min, handle: 2 h, through: 24 h}, recoat: after 10 min, limits: {air: 50-90 °F, surface: 50-90 °F}}";

    private const string Dark = "dark: {package: {net: 12 oz}, covers: 13 ft2, drying: solvent, lightness: dark, recoat: after 10 min, " + Dry;

    private const string TwoSystems = "d: [{product: dark, coats: 1}], l: [{product: light, coats: 1}]";

    private static readonly LocalDate Friday = HandJob.Friday.Date;

    [Theory]
    [InlineData("photograph", 8, 0)]
    [InlineData("solvent-clean/one", 8, 38)]
    [InlineData("scuff/one", 8, 52)]
    [InlineData("final-wipe/one", 9, 1)]
    [InlineData("tack/one", 9, 15)]
    [InlineData("coat/one/1.1", 9, 18)]
    [InlineData("refit/one", 12, 26)]
    [InlineData("put-away", 13, 9)]
    public void One_plate_takes_the_morning(string id, int hour, int minute) =>
        Start(new HandJob().Plan(), id).ShouldBe(Friday.At(new LocalTime(hour, minute)));

    /// <summary>Sprayed in place, the dark rail is masked onto the light wall: when the wall's film takes tape, 80 min after its end.</summary>
    [Fact]
    public void The_light_colour_goes_on_first_and_the_dark_one_is_masked_when_it_takes_tape()
    {
        var plan = new HandJob
        {
            Products = [Light, Dark],
            Systems = TwoSystems,
            Surfaces =
            [
                "{name: Rail, material: steel, finish: bare, area: 1 ft2, relief: 1, stays: true, system: d}",
                "{name: Wall, material: steel, finish: bare, area: 1 ft2, relief: 1, stays: true, system: l}",
            ],
        }.Plan();

        Start(plan, "mask/d").ShouldBe(End(plan, "coat/l/1.1").PlusMinutes(80));
        HandJob.Wait(plan, "mask/d", "coat/l/1.1").Stage.ShouldBe(PlanStage.Tape);
    }

    /// <summary>Two loose parts in two colours: the second is sprayed when the first takes no more dust, at touch: the dark one's 25 min or the light one's 20.</summary>
    [Fact]
    public void Nothing_is_sprayed_in_another_colour_over_a_film_that_takes_dust()
    {
        var plan = new HandJob
        {
            Products = [Light, Dark],
            Systems = TwoSystems,
            Surfaces = [Plate("Plate", "d"), Plate("Lid", "l")],
        }.Plan();

        var coats = plan.Steps.Where(step => step.Kind == "coat").OrderBy(step => step.Start).ToArray();
        coats[1].Start.ShouldBe(coats[0].End.PlusMinutes(coats[0].Product == "dark" ? 25 : 20));
    }

    /// <summary>Room for one part: the second is sprayed when the first comes off the rack, 3 h after 09:55, and is handled 3 h after 13:03.</summary>
    [Fact]
    public void A_rack_for_one_part_holds_up_the_second()
    {
        var plan = new HandJob { Place = "volume: 4000 ft3, exhaust: 800 cfm, rack: 1", Surfaces = [Plate("Plate", "one"), Plate("Lid", "one")] }.Plan();

        var coats = plan.Steps.Where(step => step.Kind == "coat").OrderBy(step => step.Start).ToArray();
        coats[1].Start.ShouldBe(coats[0].End.PlusHours(3));
        plan.Steps.Where(step => step.Kind == "refit").Max(step => step.Start).ShouldBe(coats[1].End.PlusHours(3));
    }

    /// <summary>A class of two with a panel each, worked side by side: both are ready at 08:52. With one spot the second waits for the first one's 8 min.</summary>
    [Theory]
    [InlineData(1, 9, 0)]
    [InlineData(2, 8, 52)]
    public void A_spot_is_held_while_one_sprays(int spots, int hour, int minute)
    {
        var plan = new HandJob { Place = $"volume: 4000 ft3, exhaust: 800 cfm, spray-spots: {spots}", Crew = "people: 1, stations: 2" }.Plan();

        var coats = plan.Steps.Where(step => step.Kind == "coat").Select(step => step.Start).Order().ToArray();
        coats[0].ShouldBe(Friday.At(new LocalTime(8, 52)));
        coats[1].ShouldBe(Friday.At(new LocalTime(hour, minute)));
    }

    /// <summary>
    /// Recoat after a day, in days of 100 min: coat 1 ends 09:34 on Friday, its day is over 09:34 on Saturday, and 8 min of coat 2 would not end by 09:40. Coat 2 is
    /// sprayed on Sunday. The tape of Friday 09:06 is off by Saturday 09:06; new tape of Saturday, from 90 min on, stays until an hour after coat 2.
    /// </summary>
    [Fact]
    public void Tape_comes_off_within_its_day_and_goes_on_again_before_the_next_coat()
    {
        var plan = new HandJob
        {
            Hours = "Mon-Sun: 08:00-09:40",
            Black = "{package: {net: 12 oz}, covers: 13 ft2, drying: solvent, recoat: after 24 h, " + Dry,
            Systems = "one: [{product: black, coats: 2}]",
            Surfaces = ["{name: Plate, material: steel, finish: bare, area: 1 ft2, relief: 1, system: one, mask: [{what: stud, kind: thread, edge: 1 ft}]}"],
        }.Plan();

        var (first, second) = (plan.Steps.Single(step => step.Id == "coat/one/1.1"), plan.Steps.Single(step => step.Id == "coat/one/1.2"));
        first.End.ShouldBe(Friday.At(new LocalTime(9, 34)));
        second.Start.Date.ShouldBe(Friday.PlusDays(2));
        var unmasked = plan.Steps.Where(step => step.Kind == "unmask").OrderBy(step => step.Start).ToArray();
        var remask = plan.Steps.Single(step => step.Kind == "remask");
        unmasked[0].End.ShouldBeLessThanOrEqualTo(Start(plan, "mask/one").PlusHours(24));
        remask.Start.ShouldBeGreaterThanOrEqualTo(unmasked[0].End);
        remask.End.ShouldBeLessThanOrEqualTo(second.Start);
        unmasked[1].Start.ShouldBe(second.End.PlusHours(1));
        unmasked[1].End.ShouldBeLessThanOrEqualTo(remask.Start.PlusHours(24));
    }

    /// <summary>Each the same 86 min from the start of work until the coat ends, 3 h until it can be handled, then the next working minute.</summary>
    [Theory]
    [InlineData("2027-05-14 22:00", "Mon-Sun: 22:00-02:00", "2027-05-14T23:18", "2027-05-15T22:00")]
    [InlineData("2027-05-14 08:00", "Mon: 08:00-10:00", "2027-05-17T09:18", "2027-05-24T08:00")]
    [InlineData("2027-05-31 16:00", "Mon-Sun: 16:00-18:00", "2027-05-31T17:18", "2027-06-01T16:00")]
    [InlineData("2028-02-28 16:00", "Mon-Sun: 16:00-18:00", "2028-02-28T17:18", "2028-02-29T16:00")]
    [InlineData("2027-02-28 16:00", "Mon-Sun: 16:00-18:00", "2027-02-28T17:18", "2027-03-01T16:00")]
    [InlineData("2027-12-31 22:00", "Fri: 22:00-02:00, Sat: 08:00-12:00", "2027-12-31T23:18", "2028-01-01T08:00")]
    [InlineData("2027-05-14 23:00", "Fri: 23:00-04:00", "2027-05-15T00:18", "2027-05-15T03:26")]
    public void Midnights_weeks_months_and_years_are_crossed(string start, string hours, string coat, string refit)
    {
        var plan = new HandJob { Start = start, Hours = hours }.Plan();

        Start(plan, "coat/one/1.1").ShouldBe(Time(coat));
        Start(plan, "refit/one").ShouldBe(Time(refit));
    }

    /// <summary>14 mph until noon, 5 mph at 13:00: 14 − 9·t = 10 at t = 0.444 h, 12:26.7. The wipe is kept within the hour before.</summary>
    [Fact]
    public void Outdoors_a_coat_waits_for_the_wind_to_drop()
    {
        var plan = Outdoors("wind mph", hour => hour <= 12 ? 14 : 5).Plan();

        Start(plan, "coat/one/1.1").ShouldBe(Friday.At(new LocalTime(12, 27)));
        End(plan, "final-wipe/one").ShouldBeGreaterThanOrEqualTo(Friday.At(new LocalTime(11, 27)));
    }

    /// <summary>Ready at 09:18, and touch-dry 8 + 25 min later, 09:51. Rain at 10:00 is linear from 09:00 on: none of it may fall on a wet film. It ends at 12:00; then 4 min of wiping, 10 min of flash, 3 min of tacking: 12:17.</summary>
    [Fact]
    public void Outdoors_a_coat_waits_for_the_rain_to_end()
    {
        var plan = Outdoors("rain mm", hour => hour is 10 or 11 ? 1.5 : 0).Plan();

        Start(plan, "coat/one/1.1").ShouldBe(Friday.At(new LocalTime(12, 17)));
    }

    /// <summary>Ready at 18:28; touch-dry at 19:01, a minute into the evening. It waits for 08:00, wiped again within the hour before.</summary>
    [Fact]
    public void Outdoors_a_film_is_dry_to_the_touch_before_the_evening()
    {
        var plan = new HandJob { Start = "2027-05-14 17:10", Place = "outdoors: true", Hours = "Mon-Sun: 06:00-22:00" }.Plan();
        var earlier = new HandJob { Start = "2027-05-14 17:08", Place = "outdoors: true", Hours = "Mon-Sun: 06:00-22:00" }.Plan();

        Start(plan, "coat/one/1.1").ShouldBe(Friday.PlusDays(1).At(new LocalTime(8, 0)));
        Start(earlier, "coat/one/1.1").ShouldBe(Friday.At(new LocalTime(18, 26)));
    }

    /// <summary>
    /// 40 to 70 °F, the label from 66 °F by metal. Air is there at the share 4/30 = 0.1333 below the highest, between 11:00 (0.23) and 12:00 (0.13): 11:58. Metal follows
    /// by dT/dt = (air − T)/τ, stepped here by the hundredth of a minute: steel of 1.2 mm with one face in the air τ = 7850 · 480 · 0.0012 / 7.7 = 587 s = 9.79 min, iron
    /// of 6 mm 7200 · 500 · 0.006 / 7.7 = 2805 s = 46.8 min.
    /// </summary>
    [Theory]
    [InlineData("steel", "1.2 mm", 9.787)]
    [InlineData("cast iron", "6 mm", 46.753)]
    public void A_casting_holds_up_the_first_coat_of_the_day_and_sheet_does_not(string material, string gauge, double lagMinutes)
    {
        var plan = new HandJob
        {
            Start = "2027-05-14 04:00",
            Hours = "Mon-Sun: 06:00-18:00",
            Weather = "daily: {low: 40 °F, high: 70 °F, dew-point: 20 °F}",
            Black = "{package: {net: 12 oz}, covers: 13 ft2, drying: solvent, times: {touch: 25 min, tape: 90 min, handle: 3 h, through: 24 h}, recoat: after 10 min, limits: {air: 50-90 °F, surface: 66-90 °F}}",
            Surfaces = [$"{{name: Plate, material: {material}, gauge: {gauge}, finish: bare, area: 1 ft2, relief: 1, stays: true, system: one}}"],
        }.Plan();

        Start(plan, "coat/one/1.1").ShouldBe(Friday.At(LocalTime.Midnight).PlusMinutes(FirstMinuteAt(66, lagMinutes)));
    }

    /// <summary>
    /// Held at 66 °F over 52 °F. Sealed: the pace is 2^((18.89 − 21.11)/10) = 0.857, 10 min take 11.7, coat 2 starts 12 min after 09:30. Open: off from 09:22, the air at a
    /// time t is 52 + 14·e^(−t/30) °F, 58.9 °F at 09:43, and the film takes longer.
    /// </summary>
    [Fact]
    public void An_open_heater_is_off_while_there_is_vapour_and_a_sealed_one_is_not()
    {
        var twice = new HandJob { Weather = "steady: {air: 52 °F, humidity: 50 %}", Systems = "one: [{product: black, coats: 2}]" };
        var opened = (twice with { Place = "volume: 4000 ft3, exhaust: 800 cfm, hold: 66 °F, heater: open, cools-in: 30 min" }).Plan();
        var closed = (twice with { Place = "volume: 4000 ft3, exhaust: 800 cfm, hold: 66 °F, heater: sealed" }).Plan();

        HandJob.Wait(closed, "coat/one/1.2", "coat/one/1.1").LeastMin.ShouldBe(12);
        HandJob.Wait(opened, "coat/one/1.2", "coat/one/1.1").LeastMin!.Value.ShouldBeGreaterThan(12);
        foreach (var coat in opened.Steps.Where(step => step.Kind == "coat"))
        {
            var off = Period.Between(Start(opened, "coat/one/1.1"), coat.Start, PeriodUnits.Minutes).Minutes;
            coat.AirC.ShouldBe((52 + 14 * Math.Exp(-off / 30.0) - 32) / 1.8, 1e-6);
        }

        // Purged and warm again long before the part is handled.
        opened.Steps.Single(step => step.Id == "refit/one").AirC.ShouldBe((66 - 32) / 1.8, 0.05);
        opened.Steps.Single(step => step.Id == "tack/one").AirC.ShouldBe((66 - 32) / 1.8, 1e-6);
    }

    /// <summary>Waterborne at 75 %: (1 − 0.75)/(1 − 0.50) = half the pace. Moisture-cured at 25 %: half the vapour of 50 %, half the pace. 3 h take 6.</summary>
    [Theory]
    [InlineData("waterborne", 75)]
    [InlineData("moisture", 25)]
    public void Damp_holds_up_one_film_and_dry_air_another(string drying, int percent)
    {
        var plan = new HandJob { Weather = $"steady: {{air: 70 °F, humidity: {percent} %}}", Black = $"{{package: {{net: 12 oz}}, covers: 13 ft2, drying: {drying}, recoat: after 10 min, {Dry}" }.Plan();

        Start(plan, "refit/one").ShouldBe(End(plan, "coat/one/1.1").PlusHours(6));
    }

    /// <summary>Two layers with a missed window between them: what is sanded is blown off, and no coat is wet while it is, at any of three stations.</summary>
    [Fact]
    public void Dust_keeps_clear_of_every_wet_film()
    {
        var plan = new HandJob
        {
            Crew = "people: 1, stations: 3",
            Products = ["filler: {package: {net: 12 oz}, covers: 13 ft2, drying: solvent, recoat: 10 min-30 min, times: {touch: 25 min, tape: 90 min, handle: 3 h, through: 4 h}, limits: {air: 50-90 °F, surface: 50-90 °F}}"],
            Systems = "one: [{product: filler, coats: 1}, {product: black, coats: 1}]",
            Hours = "Mon-Sun: 08:00-09:35",
        }.Plan();

        plan.Steps.ShouldContain(step => step.MakesDust && step.Id.StartsWith("rework", StringComparison.Ordinal));
        foreach (var dusty in plan.Steps.Where(step => step.MakesDust))
        {
            foreach (var coat in plan.Steps.Where(step => step.Kind == "coat"))
                (dusty.End <= coat.Start || dusty.Start >= coat.End.PlusMinutes(25)).ShouldBeTrue($"{dusty.Id} at {dusty.Start}, {coat.Id} at {coat.Start}");
        }
    }

    /// <summary>
    /// A coat on 4, 2 and 6 ft² takes (8.6 × 1.1148 + 3 × 3) × 1.15 + 3.45 = 24.8 min, which a span of 20 does not hold. 4 and 2 ft² take
    /// (8.6 × 0.5574 + 2 × 3) × 1.15 + 3.45 = 15.9, 6 ft² alone 12.4 min.
    /// </summary>
    [Fact]
    public void A_coat_that_no_span_holds_is_put_on_in_batches()
    {
        var plan = new HandJob
        {
            Hours = "Mon-Sun: [08:00-08:20, 08:30-08:50, 09:00-09:20, 09:30-09:50, 10:00-10:20]",
            Surfaces =
            [
                "{name: Plate, material: steel, finish: bare, area: 4 ft2, relief: 1, system: one}", "{name: Lid, material: steel, finish: bare, area: 2 ft2, relief: 1, system: one}",
                "{name: Cover, material: steel, finish: bare, area: 6 ft2, relief: 1, system: one}",
            ],
        }.Plan();

        var coats = plan.Steps.Where(step => step.Kind == "coat").ToArray();
        coats.Length.ShouldBeGreaterThanOrEqualTo(2);
        coats.ShouldAllBe(coat => coat.HandsMin <= 20 && Period.Between(coat.Start, coat.End, PeriodUnits.Minutes).Minutes == (long)coat.HandsMin);
        coats.SelectMany(coat => coat.Surfaces).Order(StringComparer.Ordinal).ShouldBe(["cover", "lid", "plate"]);
        plan.Reasons.ShouldBeEmpty();
    }

    private static string Plate(string name, string system) => $"{{name: {name}, material: steel, finish: bare, area: 1 ft2, relief: 1, system: {system}}}";

    private static HandJob Outdoors(string column, Func<int, double> value) => new()
    {
        Place = "outdoors: true",
        Weather = "hours: forecast.csv",
        Forecast = $"time,air °F,humidity %,{column}\n"
            + string.Join('\n', Enumerable.Range(0, 72).Select(hour => FormattableString.Invariant($"2027-05-{14 + hour / 24} {hour % 24:00}:00,70,50,{(hour < 24 ? value(hour) : 0)}"))) + "\n",
    };

    // Clock hours 9 to 14 of the day's shape. Source: ASHRAE Fundamentals 2021 ch. 14 Table 6.
    private static long FirstMinuteAt(double fahrenheit, double lagMinutes)
    {
        double[] below = [1.00, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13, 0.05, 0.00];
        double Air(double minute) => 70 - 30 * (below[(int)(minute / 60) - 5] + (below[(int)(minute / 60) - 4] - below[(int)(minute / 60) - 5]) * (minute % 60 / 60));
        const double step = 0.01;
        var (metal, minute) = (Air(300), 300.0);
        while (metal < fahrenheit)
        {
            metal += step * (Air(minute) - metal) / lagMinutes;
            minute += step;
        }

        return (long)Math.Ceiling(minute - step);
    }

    private static LocalDateTime Start(Plan plan, string id) => plan.Steps.Single(step => step.Id == id).Start;

    private static LocalDateTime End(Plan plan, string id) => plan.Steps.Single(step => step.Id == id).End;

    private static LocalDateTime Time(string text) => NodaTime.Text.LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-ddTHH:mm").Parse(text).Value;
}
