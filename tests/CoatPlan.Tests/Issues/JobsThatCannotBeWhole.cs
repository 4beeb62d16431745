using CoatPlan.Timetable;

namespace CoatPlan.Tests.Issues;

/// <summary>Jobs of which only a part can be placed, and one that was thought to be of them.</summary>
public class JobsThatCannotBeWhole
{
    [Fact]
    public void A_garage_always_too_cold_still_plans_the_prep_and_says_why_no_coat()
    {
        var plan = Planned("daily: {low: 24 °F, high: 40 °F, dew-point: 20 °F}", "Sat-Sun: [08:00-12:00, 13:00-18:00]", "{product: black, coats: 2}");

        plan.Steps.ShouldContain(step => step.Kind == "solvent-clean");
        plan.Steps.ShouldNotContain(step => step.Kind == "coat");
        plan.Reasons.ShouldHaveSingleItem().ShouldContain("below the label's 50 °F");
        plan.InService.ShouldBeNull();
    }

    [Fact]
    public void A_window_that_short_periods_cannot_hold_moves_on_though_another_step_found_no_time()
    {
        // The mist coat and two coats do not all fit into one hour of 50-minute periods: one of the gaps has to take the label's later window.
        var plan = Planned(
            "daily: {low: 59 °F, high: 76 °F, dew-point: 52 °F}",
            "Mon-Fri: [09:00-09:50, 10:00-10:50, 11:00-11:50, 13:00-13:50, 14:00-14:50]",
            "{product: cure, coats: 1}, {product: black, mist: true, coats: 2}");

        plan.Reasons.ShouldBeEmpty();
        // Two of the cure, the least of its label, a mist coat and two of the black.
        plan.Steps.Count(step => step.Kind == "coat").ShouldBe(5);
    }

    private static Plan Planned(string weather, string hours, string layers)
    {
        var job = $$$"""
            coatplan: 1
            job: A part at least
            start: 2027-05-14 08:00
            place: {volume: 4000 ft3, exhaust: 800 cfm, weather: { {{{weather}}} } }
            crew: {people: 1, hours: { {{{hours}}} } }
            products:
              black: {preset: enamel-aerosol, lightness: black}
              cure: {preset: moisture-cure-urethane, lightness: black}
            systems: {s: [ {{{layers}}} ]}
            surfaces:
              - {name: Bracket, material: steel, finish: bare, condition: [light rust], area: 1 ft2, system: s}
            """;
        var intake = JobIntake.Read(job, "part.job.yaml", Trade.Standard, _ => FileText.Unreadable("no forecast is named"));
        intake.Problems.ShouldBeEmpty();
        return Planner.Plan(intake.Ready!, SearchDepth.Quick);
    }
}
