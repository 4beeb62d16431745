using CoatPlan.Paint;
using CoatPlan.Plans;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Outside;

/// <summary>What any painter knows of coats. Status: common practice, unless a source stands beside it.</summary>
public class TradeFactsOfCoats
{
    [Fact]
    public void Passes_overlap_by_half()
    {
        // Source: MIL-HDBK-1110 §9.6.8.
        var aerosol = Trade.Standard.Catalogue.Method("aerosol");

        var passes = SprayPasses.Of(aerosol, Trade.Standard.Catalogue.Figures).ShouldNotBeNull();

        passes.Spacing.Millimeters.ShouldBe(aerosol.FanWidth!.Value.Millimeters / 2, 1e-9);
    }

    [Fact]
    public void Three_medium_coats_make_an_underhood_black()
    {
        var coats = Planned("{preset: underhood-black-aerosol}", 3).Steps.Where(step => step.Kind == "coat").ToArray();

        coats.Select(step => step.Coat).ShouldBe([1, 2, 3]);
        coats.ShouldAllBe(step => step.Of == 3);
    }

    [Fact]
    public void A_coat_waits_for_dry_to_touch_where_the_label_gives_no_earlier_time()
    {
        var plan = Planned(
            "{covers: 13 ft2, times: {touch: 25 min, handle: 3 h, through: 24 h}, recoat: within 2 h, limits: {air: 50-90 °F, surface: 50-90 °F, humidity: 85 %}}",
            2);

        var wait = plan.Steps.Single(step => step.Coat == 2).After.Single(wait => wait.Stage == PlanStage.Recoat);
        wait.LeastMin.ShouldBe(25);
        wait.MostMin.ShouldBe(120);
    }

    private static Plan Planned(string product, int coats)
    {
        var job = $$"""
            coatplan: 1
            job: Coats
            start: 2027-06-05 08:00
            place:
              volume: 4000 ft3
              exhaust: 800 cfm
              weather: {steady: {air: 70 °F, humidity: 50 %} }
            crew:
              people: 1
              hours: {Sat-Sun: 08:00-18:00}
            products:
              black: {{product}}
            systems:
              s:
                - product: black
                  coats: {{coats}}
            surfaces:
              - {name: Plate, material: steel, finish: bare, area: 2 ft2, system: s}
            """;
        var intake = JobIntake.Read(job, "coats.job.yaml", Trade.Standard, _ => FileText.Unreadable("no forecast is named"));
        intake.Problems.ShouldBeEmpty();
        return Planner.Plan(intake.Ready!, SearchDepth.Quick);
    }
}
