using CoatPlan.Presets;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Plans;

/// <summary>What a change leaves as it is, is not worked out again.</summary>
public class GroundworkTests
{
    private const string Job = """
        coatplan: 1
        job: Brackets
        start: 2027-05-14 16:00
        place:
          room: {length: 22 ft, width: 20 ft, height: 9 ft}
          weather: {daily: {low: 54 °F, high: 74 °F, dew-point: 46 °F}}
        crew: {people: 1, hours: {Mon-Sun: 08:00-18:00}}
        products:
          black: {preset: underhood-black-aerosol}
        systems:
          black: [{product: black, coats: 2}]
        surfaces:
          - {name: Bracket, material: steel, finish: bare, area: 1 ft2, system: black}

        """;

    private const string Done = "as-of: 2027-05-14 17:00\ndone:\n  - {operation: degrease, at: 2027-05-14 16:40}\n";

    [Fact]
    public void Work_that_is_done_leaves_prep_and_air_as_they_are()
    {
        var before = Read(Job);

        var after = Read(Job + Done, before);

        after.Job.Done.Length.ShouldBe(1);
        after.Groundwork.Prepared.ShouldBeSameAs(before.Groundwork.Prepared);
        after.Groundwork.Airs.ShouldBeSameAs(before.Groundwork.Airs);
    }

    [Fact]
    public void Another_area_leaves_the_air_as_it_is_and_nothing_else()
    {
        var before = Read(Job);

        var after = Read(Job.Replace("area: 1 ft2", "area: 3 ft2", StringComparison.Ordinal), before);

        after.Groundwork.Prepared.ShouldNotBeSameAs(before.Groundwork.Prepared);
        after.Groundwork.Airs.Climate.ShouldBeSameAs(before.Groundwork.Airs.Climate);
        Around(after).ShouldBeSameAs(Around(before));
    }

    [Theory]
    [InlineData("high: 74 °F", "high: 70 °F")]
    [InlineData("start: 2027-05-14 16:00", "start: 2027-05-14 15:00")]
    [InlineData("preset: underhood-black-aerosol", "preset: enamel-aerosol")]
    public void Another_place_time_or_product_has_air_of_its_own(string was, string now)
    {
        var before = Read(Job);

        var after = Read(Job.Replace(was, now, StringComparison.Ordinal), before);

        after.Groundwork.Airs.ShouldNotBeSameAs(before.Groundwork.Airs);
        Around(after).ShouldNotBeSameAs(Around(before));
    }

    [Fact]
    public void What_stands_on_another_line_is_read_anew()
    {
        var before = Read(Job);

        var after = Read("# A line more.\n" + Job, before);

        after.Job.Surfaces[0].Mark.Line.ShouldBe(before.Job.Surfaces[0].Mark.Line + 1);
    }

    [Fact]
    public void What_an_alias_repeats_is_read_anew()
    {
        string aliased = Job
            .Replace("crew: {people: 1, hours: {Mon-Sun: 08:00-18:00}}", "crew:\n  people: &one 1\n  hours: {Mon-Sun: 08:00-18:00}", StringComparison.Ordinal)
            .Replace("{name: Bracket, material: steel, finish: bare, area: 1 ft2, system: black}", "name: Bracket\n    material: steel\n    finish: bare\n    area: 1 ft2\n    system: black\n    count: *one", StringComparison.Ordinal);
        var before = Read(aliased);

        var after = Read(aliased.Replace("&one 1", "&one 2", StringComparison.Ordinal), before);

        after.Groundwork.Prepared.Surfaces[0].Count.ShouldBe(2);
    }

    [Fact]
    public void A_job_of_other_presets_takes_nothing_over()
    {
        var before = Read(Job);

        var after = JobIntake.Read(Job, "other.job.yaml", Trade.Read([new PresetText("own.yaml", "figures: {wind-limit: {speed: 8 mph}}")]).Trade!, _ => FileText.Unreadable("none"), before).Ready!;

        after.Groundwork.Prepared.ShouldNotBeSameAs(before.Groundwork.Prepared);
        after.Groundwork.Airs.ShouldNotBeSameAs(before.Groundwork.Airs);
    }

    private static SurfaceAir Around(ReadyJob ready) => new AirAround(ready.Groundwork.Airs, ready.Job, ready.Trade.Catalogue).Of(["bracket"]);

    private static ReadyJob Read(string text, ReadyJob? before = null)
    {
        var intake = JobIntake.Read(text, "brackets.job.yaml", Trade.Standard, _ => FileText.Unreadable("none"), before);
        return intake.Ready ?? throw new ShouldAssertException(string.Join('\n', intake.Problems));
    }
}
