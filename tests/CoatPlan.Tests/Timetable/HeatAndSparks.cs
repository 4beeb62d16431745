namespace CoatPlan.Tests.Timetable;

/// <summary>No flame, spark or hot work in air that could burn, and nothing that burns let into air with a flame in it, whichever came first. Source: 29 CFR 1910.107(c).</summary>
public class HeatAndSparks
{
    [Fact]
    public void Nothing_is_sprayed_while_another_part_is_cured_by_heat()
    {
        var plan = new HandJob
        {
            Products =
            [
                "hot: {preset: high-heat-aerosol, times: {touch: 20 min, tape: 30 min, handle: 40 min, through: 1 h, service: 2 h}}",
                "etch: {preset: etch-primer-aerosol}",
            ],
            Systems = "hot: [{product: hot, coats: 1}], one: [{product: etch}, {product: black, coats: 3}]",
            Surfaces =
            [
                "{name: Manifold, material: cast iron, finish: bare, area: 0.2 m2, form: casting, heat: 500 °C, system: hot}",
                "{name: Rail, material: steel, finish: bare, condition: [scaly rust], area: 2 m2, stays: true, system: one}",
            ],
        }.Plan();

        var cure = plan.Steps.Single(step => step.Kind == "heat-cure");
        var hotUntil = cure.End.PlusMinutes((long)plan.Steps.SelectMany(step => step.After).Where(wait => wait.Step == cure.Id).Max(wait => wait.LeastMin)!.Value);
        hotUntil.ShouldBeGreaterThan(cure.End.PlusHours(2));
        plan.Steps.Where(step => step.Kind == "coat").ShouldAllBe(coat => coat.End <= cure.Start || coat.Start >= hotUntil);
    }

    [Fact]
    public void No_wire_wheel_runs_beside_open_solvent()
    {
        var plan = new HandJob
        {
            Crew = "people: 2",
            Surfaces =
            [
                "{name: Rail, material: steel, finish: bare, condition: [scaly rust], area: 0.5 m2, system: one}",
                "{name: Cover, material: steel, finish: factory paint, lead-test: negative, condition: [oily], area: 2 m2, system: two}",
            ],
            Systems = "one: [{product: black, coats: 2}], two: [{product: black, coats: 3}]",
        }.Plan();

        var derust = plan.Steps.Single(step => step.Kind == "derust");
        derust.Title.ShouldContain("wire wheel", Case.Insensitive);
        plan.Steps.Where(step => step.Kind is "solvent-clean" or "final-wipe").ShouldAllBe(wipe => wipe.End <= derust.Start || wipe.Start >= derust.End);
    }
}
