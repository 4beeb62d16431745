using CoatPlan.Plans;

namespace CoatPlan.Tests.Timetable;

/// <summary>What thickness, cold and a label's own table do to the waits of a plan. Each figure is worked in the test.</summary>
public class ThickAndColdFilms
{
    private const string Masked = "{name: Plate, material: steel, finish: bare, area: 1 ft2, relief: 1, system: one, mask: [{what: stud, kind: thread, edge: 1 ft}]}";

    /// <summary>The class puts on 1 mil and can be handled after 3 h at 70 °F. At 2 mil: 180 × 2^1.5 = 509.1 min.</summary>
    [Fact]
    public void A_coat_twice_as_thick_as_its_class_takes_nearly_three_times_as_long()
    {
        var usual = new HandJob { Black = "{preset: underhood-black-aerosol}" };
        var thick = usual with { Black = "{preset: underhood-black-aerosol, dry-film: 2 mil}" };
        var thin = usual with { Black = "{preset: underhood-black-aerosol, dry-film: 0.5 mil}" };

        HandleMinutes(usual).ShouldBe(180);
        HandleMinutes(thick).ShouldBe(510);
        HandleMinutes(thin).ShouldBe(180);
        Handle(thick).LabelMin.ShouldBe(180);
    }

    /// <summary>The first window of the class opens after 10 min. At 2 mil: 10 × 2^1.5 = 28.3 min.</summary>
    [Fact]
    public void A_thick_coat_waits_longer_for_the_next_one()
    {
        var plan = new HandJob { Black = "{preset: underhood-black-aerosol, dry-film: 2 mil}", Systems = "one: [{product: black, coats: 2}]" }.Plan();

        HandJob.Wait(plan, "coat/one/1.2", "coat/one/1.1").LeastMin.ShouldBe(29);
    }

    [Fact]
    public void Times_that_the_job_says_itself_hold_for_the_film_that_it_says() =>
        HandleMinutes(new HandJob { Black = "{preset: underhood-black-aerosol, dry-film: 2 mil, times: {touch: 25 min, tape: 90 min, handle: 3 h, through: 24 h}}" }).ShouldBe(180);

    /// <summary>Read at 1.5 mil where the label says 1: 180 × 1.5^1.5 = 330.7 min.</summary>
    [Fact]
    public void A_film_that_was_read_too_thick_waits_longer()
    {
        var job = new HandJob
        {
            Black = "{preset: underhood-black-aerosol, coats: 1-3}",
            More = "as-of: 2027-05-14 10:00\ndone: [{surface: Plate, layer: 1, coat: 1, at: 2027-05-14 10:00, took: 5 min, readings: {film: 1.5 mil}}]",
        };

        HandleMinutes(job).ShouldBe(331);
    }

    /// <summary>A mist coat is half a coat, and dries no sooner than the label says: 10 min until the first full coat.</summary>
    [Fact]
    public void A_mist_coat_is_not_promised_to_dry_sooner()
    {
        var plan = new HandJob { Systems = "one: [{product: black, coats: 1, mist: true}]" }.Plan();

        HandJob.Wait(plan, "coat/one/1.1", "coat/one/1.0").LeastMin.ShouldBe(10);
    }

    /// <summary>An hour at 70 °F. At 52 °F, 10 °C colder, it is two; touch would be 25 × 2 = 50 min.</summary>
    [Theory]
    [InlineData(70, 60)]
    [InlineData(80, 60)]
    [InlineData(52, 120)]
    public void The_hour_before_tape_comes_off_is_longer_in_the_cold(int fahrenheit, int minutes)
    {
        var plan = new HandJob { Weather = $"steady: {{air: {fahrenheit} °F, humidity: 50 %}}", Surfaces = [Masked] }.Plan();

        HandJob.Wait(plan, plan.Steps.Single(step => step.Kind == "unmask").Id, "coat/one/1.1").LeastMin.ShouldBe(minutes);
    }

    /// <summary>
    /// The table says 1 h 30 min to handle at 90 °F and 6 h at 50 °F, the label 3 h beside it. Warm: 3 h, never under <c>labelMin</c>. 60 °F: √(6 × 3) = 4.243 h = 254.6 min.
    /// </summary>
    [Theory]
    [InlineData(90, 180)]
    [InlineData(80, 180)]
    [InlineData(70, 180)]
    [InlineData(60, 255)]
    [InlineData(50, 360)]
    public void A_table_of_times_lengthens_a_wait_and_never_shortens_it(int fahrenheit, int minutes)
    {
        var job = new HandJob
        {
            Black = "{package: {net: 12 oz}, covers: 13 ft2, drying: solvent, times: {touch: 25 min, tape: 90 min, handle: 3 h, through: 24 h}, "
                + "times-at: [{air: 50 °F, handle: 6 h}, {air: 70 °F, handle: 3 h}, {air: 90 °F, handle: 90 min}], "
                + "recoat: [10 min-1 h, after 24 h], limits: {air: 50-90 °F, surface: 50-90 °F, humidity: 30-80 %}}",
            Weather = $"steady: {{air: {fahrenheit} °F, humidity: 50 %}}",
        };

        HandleMinutes(job).ShouldBe(minutes);
    }

    private static double? HandleMinutes(HandJob job) => Handle(job).LeastMin;

    private static PlanWait Handle(HandJob job) =>
        job.Plan().Steps.Single(step => step.Id == "refit/one").After.Single(wait => wait.Stage == PlanStage.Handle);
}
