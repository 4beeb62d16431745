using CoatPlan.Problems;

namespace CoatPlan.Tests.Jobs;

/// <summary>One mistake hides no other: a person mends a file once.</summary>
public class MistakesThatHidOthers
{
    private static readonly string s_place = Job(string.Join('\n',
        "  room: {length: 22 ft, width: 20 ft, height: 9 ft}",
        "  exhaust: 800 ft/min",
        "  mixing: 11",
        "  spray-spots: 0",
        "  rack: -1",
        "  hold: 20 min",
        "  weather: {steady: {air: 70 °F, humidity: 150 %}}"));

    [Fact]
    public void Weather_that_is_wrong_hides_nothing_of_the_place() =>
        Problems(s_place).Select(problem => (problem.Line, problem.Code)).ShouldBe(
            [(6, "wrong-unit"), (7, "out-of-range"), (8, "out-of-range"), (9, "out-of-range"), (10, "wrong-unit"), (11, "out-of-range")]);

    [Fact]
    public void Weather_that_says_no_damp_hides_no_low_above_the_high() =>
        Problems(Job("  volume: 50 m3\n  weather: {daily: {low: 80 °F, high: 70 °F}}")).Select(problem => problem.Code).ShouldBe(["one-of", "order"], ignoreOrder: true);

    [Fact]
    public void A_solvent_that_nobody_knows_and_a_mistake_elsewhere_are_told_together()
    {
        var problems = Problems(Job("  volume: 50 m3\n  weather: {steady: {air: 70 °F, humidity: 500 %}}", "{preset: underhood-black-aerosol, solvents: {acetonne: 5 %, 67-64-1: 5 %, Acetone: 2 %}}"));

        problems.Select(problem => problem.Code).ShouldBe(["out-of-range", "unknown-name"]);
        problems[1].Mend.ShouldBe("`acetone`");
        problems[1].Message.ShouldContain("its vapour cannot be counted");
    }

    [Fact]
    public void A_forecast_that_cannot_be_read_and_a_mistake_elsewhere_are_told_together() =>
        Problems(Job("  volume: 50 m3\n  mixing: 11\n  weather: {hours: gone.csv}")).Select(problem => problem.Line).ShouldBe([6, 7]);

    private static string Job(string place, string black = "{preset: underhood-black-aerosol}") => $$$"""
        coatplan: 1
        job: Wrong in several places
        start: 2027-05-14 08:00
        place:
        {{{place}}}
        crew: {people: 1, hours: {Mon-Fri: 08:00-18:00}}
        products:
          black: {{{black}}}
        systems:
          s: [{product: black}]
        surfaces:
          - {name: A, material: steel, area: 1 ft2, system: s}
        """;

    private static ImmutableArray<Problem> Problems(string text) =>
        JobIntake.Read(text, "wrong.job.yaml", Trade.Standard, _ => FileText.Unreadable("it is gone")).Problems;
}
