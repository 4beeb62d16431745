using CoatPlan.Plans;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Issues;

/// <summary>A recorded coat says that what comes before it was done, and what its window asks still holds.</summary>
public class ACoatThatWasPutOn
{
    private const string Job = """
        coatplan: 1
        job: In the middle of it
        start: 2027-05-14 08:00
        as-of: 2027-05-16 08:00
        place: {volume: 4000 ft3, exhaust: 800 cfm, weather: {steady: {air: 70 °F, humidity: 50 %}}}
        crew: {people: 1, hours: {Fri-Sun: 08:00-18:00}}
        products:
          etch: {preset: etch-primer-aerosol}
          black: {preset: underhood-black-aerosol}
        systems: {s: [{product: etch, coats: 1}, {product: black, coats: 2}]}
        surfaces:
          - {name: Bracket, material: steel, finish: bare, condition: [light rust], area: 1 ft2, system: s}
        done:
          - {surface: bracket, layer: 1, coat: 1, at: 2027-05-14 12:00, took: 10 min}
        """;

    private static readonly Lazy<Plan> ThePlan = new(() =>
        Planner.Plan(JobIntake.Read(Job, "middle.job.yaml", Trade.Standard, _ => FileText.Unreadable("no forecast is named")).Ready!, SearchDepth.Quick));

    [Fact]
    public void Nothing_before_it_is_planned_again() =>
        ThePlan.Value.Steps.Select(step => step.Kind).ShouldNotContain(kind => kind == "derust" || kind == "solvent-clean" || kind == "photograph" || kind == "strip-down");

    [Fact]
    public void It_stands_as_a_fact() =>
        ThePlan.Value.Steps.Single(step => step.Done).End.ShouldBe(new LocalDateTime(2027, 5, 14, 12, 0));

    [Fact]
    public void Its_missed_window_is_scuffed_before_the_next_coat()
    {
        // The etch primer takes another product for 24 h; the plan goes on after 44 h.
        var scuff = ThePlan.Value.Steps.Single(step => step.Kind == "scuff");
        var next = ThePlan.Value.Steps.First(step => step is { Kind: "coat", Done: false });

        scuff.End.ShouldBeLessThanOrEqualTo(next.Start);
        scuff.After.ShouldContain(wait => wait.Stage == PlanStage.Through);
    }
}
