using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Text;
using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Timetable;

namespace CoatPlan.Tests.Plans;

/// <summary>What a plan says whose coats could not be placed: nothing that could be taken for a word on the whole job. Source: the air of coats that are not placed is not computed.</summary>
public class PlansInPart
{
    private static readonly HandJob s_tooCold = new()
    {
        Weather = "steady: {air: 35 °F, humidity: 50 %}",
        Place = "volume: 1440 ft3",
        Products = ["thin: {preset: enamel-aerosol, lightness: black}"],
        Systems = "one: [{product: thin, coats: 2}]",
        More = "finish-by: 2027-05-24 18:00",
    };

    [Fact]
    public void Its_air_is_told_as_not_computed_and_nobody_sprays_with_a_dust_mask()
    {
        var plan = s_tooCold.Plan();

        plan.IsWhole.ShouldBeFalse();
        plan.Finish.ShouldNotBeNull();
        plan.Air.ExhaustForLimitM3PerMin.ShouldBeNull();
        plan.Air.ExhaustForLelM3PerMin.ShouldBeNull();
        plan.Air.Notes.ShouldContain(note => note.Contains("not computed", StringComparison.Ordinal));
        plan.Respirator.Kind.ShouldContain("organic-vapour cartridges");
    }

    [Fact]
    public void What_is_worn_for_the_coats_to_come_is_said_and_bought_alike()
    {
        var plan = (s_tooCold with { Products = ["hard: {preset: urethane-2k-aerosol, lightness: black}"], Systems = "one: [{product: hard, coats: 2}]" }).Plan();

        plan.IsWhole.ShouldBeFalse();
        plan.Respirator.Kind.ShouldStartWith("supplied air");
        plan.Cautions.ShouldContain(caution => caution.Code == "supplied-air");
        plan.Cautions.ShouldNotContain(caution => caution.Code == "cartridges");
        plan.Consumables.ShouldNotContain(item => item.Item.Contains("cartridge", StringComparison.Ordinal));
    }

    [Fact]
    public void Each_sheet_says_that_it_is_not_the_whole_job()
    {
        var sheets = SheetSet.Of(s_tooCold.Plan());

        sheets.ShouldNotBeEmpty();
        sheets.ShouldAllBe(sheet => sheet.Blocks.OfType<Notice>().Any(notice => notice.Text.Contains("Not the whole job", StringComparison.Ordinal)));
        sheets.Select(TextSheet.Write).ShouldAllBe(text => !text.Contains("even without exhaust", StringComparison.Ordinal));
    }

    [Fact]
    public void It_meets_no_finish_and_is_compared_with_none()
    {
        var (part, whole) = (s_tooCold, s_tooCold with { Weather = "steady: {air: 70 °F, humidity: 50 %}" });

        var printed = CommandRun.WithInput(part.Text, "plan", "-").Output;
        printed.ShouldContain("the part that could be placed ends");
        printed.ShouldNotContain(": met");
        printed.ShouldNotContain("no plan can finish earlier");
        PlanComparison.Of("part", part.Plan(), "whole", whole.Plan()).FinishMovesMin.ShouldBeNull();
    }
}
