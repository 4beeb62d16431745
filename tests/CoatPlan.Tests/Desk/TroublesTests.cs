using CoatPlan.App.Desk;
using CoatPlan.App.Screens;
using CoatPlan.Plans;
using CoatPlan.Tests.Plans;

namespace CoatPlan.Tests.Desk;

public sealed class TroublesTests
{
    [Fact]
    public void Reasons_ways_out_and_warnings_stand_on_one_page_worst_first()
    {
        var plan = SamplePlan.Weekend() with
        {
            Reasons = ["Sunday ends before the last coat can be handled."],
            WaysOut = [new PlanWayOut("One more hour on Saturday.", new LocalDateTime(2027, 5, 16, 17, 0))],
            Warnings = [new PlanWarning("lead", SamplePlan.Weekend().Surfaces[0].Id, null, "Old paint may hold lead.")],
        };

        var lines = TroublesPage.Of(plan).Lines.Select(line => $"{line.Lead}{line.Text}").ToList();

        lines.IndexOf("! Sunday ends before the last coat can be handled.").ShouldBe(1);
        lines.ShouldContain("> One more hour on Saturday. Finish then: Sun 16 May 17:00.");
        lines[^1].ShouldBe($"! {plan.Surfaces[0].Name}: Old paint may hold lead. [lead]");
    }

    [Fact]
    public void They_are_read_from_every_place_and_the_totals_name_the_key()
    {
        var desk = Desks.Small();
        TotalsScreen.Text(desk).ShouldContain($"{Keys.NameOf(Word.Troubles)}: ");
        foreach (var place in Enum.GetValues<DeskPlace>())
        {
            desk.Do(Word.GoSurfaces + (int)place);

            desk.Do(Word.Troubles);

            desk.Page.ShouldNotBeNull().Lines.ShouldNotBeEmpty();
            desk.Do(Word.Back);
        }
    }
}
