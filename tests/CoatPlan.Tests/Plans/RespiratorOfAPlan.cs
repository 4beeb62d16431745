using CoatPlan.Timetable;

namespace CoatPlan.Tests.Plans;

/// <summary>What is bought and told for a plan follows from the respirator that the same plan asks for.</summary>
public class RespiratorOfAPlan
{
    [Fact]
    public void Cartridges_are_bought_and_told_of_where_cartridges_are_worn()
    {
        var plan = Of("underhood-black-aerosol");

        plan.Respirator.Kind.ShouldContain("cartridges");
        Bought(plan).ShouldContain("cartridge");
        Told(plan).ShouldBe(["respirator", "cartridges"]);
    }

    [Theory]
    [InlineData("urethane-2k-aerosol")]
    [InlineData("moisture-cure-urethane, method: spray gun")]
    public void Neither_is_where_the_air_is_supplied(string product)
    {
        var plan = Of(product);

        plan.Respirator.Kind.ShouldContain("supplied air");
        Bought(plan).ShouldNotContain("cartridge");
        Bought(plan).ShouldNotContain("prefilter");
        Told(plan).ShouldBe(["supplied-air"]);
    }

    private static string[] Bought(Plan plan) => [.. plan.Consumables.Select(need => need.Item).Select(item => item.Contains("cartridge", StringComparison.Ordinal) ? "cartridge" : item.Contains("prefilter", StringComparison.Ordinal) ? "prefilter" : item)];

    private static string[] Told(Plan plan) => [.. plan.Cautions.Select(caution => caution.Code).Where(code => code is "respirator" or "cartridges" or "supplied-air")];

    private static Plan Of(string product)
    {
        var text = $$$"""
            coatplan: 1
            job: Brackets
            start: 2027-05-14 08:00
            place:
              room: {length: 22 ft, width: 20 ft, height: 9 ft}
              exhaust: 4000 ft3/min
              weather: {daily: {low: 64 °F, high: 74 °F, dew-point: 46 °F}}
            crew: {people: 1, hours: {Mon-Sun: 08:00-18:00}}
            products:
              coat: {preset: {{{product}}}}
            systems:
              coat: [{product: coat, coats: 1}]
            surfaces:
              - {name: Bracket, material: steel, finish: factory paint, area: 0.2 ft2, system: coat}

            """;
        var intake = JobIntake.Read(text, "brackets.job.yaml", Trade.Standard, _ => FileText.Unreadable("none"));
        return Planner.Plan(intake.Ready ?? throw new ShouldAssertException(string.Join('\n', intake.Problems)), SearchDepth.Quick);
    }
}
