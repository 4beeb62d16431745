using CoatPlan.Timetable;

namespace CoatPlan.Tests.Issues;

/// <summary>What was scuffed and wiped before a coat is not thereby scuffed and wiped before the next one, nor unmasked at the end.</summary>
public class TheSameWordTwice
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
          - {name: Bracket, material: steel, finish: bare, condition: [light rust], area: 1 ft2, system: s, mask: [{what: bolt seats, kind: bolt seat, edge: 1 ft}]}
        done:
          - {surface: bracket, operation: scuff, at: 2027-05-14 10:00}
          - {surface: bracket, operation: mask, at: 2027-05-14 10:30}
          - {surface: bracket, operation: final-wipe, at: 2027-05-14 11:40}
          - {surface: bracket, layer: 1, coat: 1, at: 2027-05-14 12:00, took: 10 min}
          - {surface: bracket, operation: unmask, at: 2027-05-14 14:00}

        """;

    [Fact]
    public void What_stands_between_coats_is_still_to_be_done()
    {
        var between = Of(Job).Steps.Where(step => step.Kind is "scuff" or "blow-off" or "final-wipe" && step.Start > new LocalDateTime(2027, 5, 15, 0, 0)).ToArray();

        between.Select(step => step.Kind).ShouldBe(["scuff", "blow-off", "final-wipe"], ignoreOrder: true);
        between.ShouldAllBe(step => !step.Done);
    }

    [Fact]
    public void What_was_done_before_the_coat_stands_once()
    {
        Of(Job).Steps.Where(step => step.Done).Select(step => step.Kind).ShouldBe(["scuff", "mask", "final-wipe", "coat", "unmask"]);
    }

    [Fact]
    public void Tape_that_came_off_in_between_does_not_end_the_job()
    {
        Of(Job).Steps.Last(step => step.Kind == "unmask").Done.ShouldBeFalse();
    }

    private static Plan Of(string text) =>
        Planner.Plan(JobIntake.Read(text, "middle.job.yaml", Trade.Standard, _ => FileText.Unreadable("no forecast is named")).Ready!, SearchDepth.Quick);
}
