using CoatPlan.Sheets.Content;
using CoatPlan.Tests.Plans;
using CoatPlan.Tests.Timetable;

namespace CoatPlan.Tests.Sheets;

/// <summary>What hangs on the wall agrees with the steps.</summary>
public class SafetySheetTests
{
    [Fact]
    public void The_exhaust_runs_on_for_what_the_last_coat_asks()
    {
        // Half an hour lies between the coats, so each of the first two still has the next one's vapour in its purge.
        var line = Exhaust(Purging(0, 77, 47, 17));

        line.ShouldContain("until 17 min after its last");
        line.ShouldContain("Satin black, coat 3 of 3");
    }

    [Fact]
    public void Of_several_sessions_the_longest_purge_is_told() =>
        // The etch primer's air is clear long before the next coat begins.
        Exhaust(Purging(21, 77, 47, 17)).ShouldContain("until 21 min after its last");

    [Fact]
    public void A_session_that_is_clear_at_its_end_asks_for_no_purge() =>
        Lines(Purging(0, 45, 15, 0)).ShouldContain("The computed air is under the exposure limits as soon as the last coat of a session ends.");

    [Fact]
    public void Air_that_never_clears_is_said() =>
        Lines(Purging(0, null, null, null)).ShouldContain(line => line.StartsWith("After “Satin black, coat 3 of 3” the computed air does not come under", StringComparison.Ordinal));

    [Fact]
    public void The_reasons_of_the_respirator_stand_with_it()
    {
        var blocks = SafetySheet.Of(SamplePlan.Weekend()).Blocks;

        blocks[0].ShouldBe(new Heading("Breathe through"));
        blocks[1].ShouldBeOfType<Notice>();
        blocks[2].ShouldBeOfType<Bullets>().Items.ShouldBe(SamplePlan.Weekend().Respirator.Why);
        blocks[3].ShouldBe(new Heading("Mask"));
    }

    [Fact]
    public void What_is_sprayed_in_place_with_nothing_named_is_masked_all_round()
    {
        var plan = new HandJob
        {
            Surfaces =
            [
                "{name: Rail, count: 2, material: steel, finish: bare, area: 4 ft2, relief: 1, stays: true, system: one}",
                "{name: Bay, material: steel, finish: bare, area: 4 ft2, relief: 1, stays: true, system: one, mask: [{what: loom, kind: wiring, edge: 3 ft}]}",
                "{name: Tray, material: steel, finish: bare, area: 4 ft2, relief: 1, system: one}",
            ],
        }.Plan(CoatPlan.Timetable.SearchDepth.Quick);

        var rows = SafetySheet.Of(plan).Blocks.OfType<Grid>().First().Rows;

        plan.Steps.Where(step => step.Kind == "mask").SelectMany(step => step.Surfaces).Order().ShouldBe(["bay", "rail"]);
        rows.Select(row => (row[0], row[1])).ShouldBe([("Rail (2)", "all that is around it"), ("Bay", "loom")]);
        // Four sides of two feet, on each of the two.
        rows[0][3].ShouldBe("8 ft");
        rows[0][4].ShouldEndWith(" ft²");
    }

    private static Plan Purging(params double?[] minutes)
    {
        var plan = SamplePlan.Weekend();
        return plan with { Air = plan.Air with { ByStep = [.. plan.Air.ByStep.Zip(minutes, (step, purge) => step with { PurgeMin = purge })] } };
    }

    private static string Exhaust(Plan plan) => Lines(plan).Single(line => line.StartsWith("Keep the exhaust running", StringComparison.Ordinal));

    private static IEnumerable<string> Lines(Plan plan) =>
        SafetySheet.Of(plan).Blocks.OfType<Columns>().Single().Parts.OfType<Bullets>().SelectMany(bullets => bullets.Items);
}
