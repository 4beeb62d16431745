using CoatPlan.Jobs;
using CoatPlan.Prep;

namespace CoatPlan.Tests.Prep;

/// <summary>What is kept wet is done as it would be done dry, but for the water: the step says what comes off, and its reasons fit its title.</summary>
public class KeptWet
{
    [Theory]
    [InlineData("fibreglass", "unknown", "peeling", "Scrape off loose and burnt film, kept wet")]
    [InlineData("zinc-plated steel", "bare", "white corrosion", "Rub off corrosion with non-woven pads, kept wet")]
    [InlineData("zinc-plated steel", "factory paint", "peeling", "Scrape off loose and burnt film, kept wet")]
    [InlineData("aluminium", "unknown", "white corrosion", "Rub off corrosion with non-woven pads, kept wet")]
    [InlineData("steel", "unknown", "scaly rust", "Scrape and brush off rust, kept wet")]
    [InlineData("steel", "unknown", "burnt", "Scrape and brush off rust, kept wet")]
    public void A_wet_way_names_what_comes_off(string material, string finish, string condition, string title) =>
        PrepJob.Sequence(PrepJob.Surface(material: material, finish: finish, condition: [condition])).The("derust").Title.ShouldStartWith(title);

    [Fact]
    public void Rust_on_cadmium_under_loose_film_is_lifted_and_not_brushed() =>
        PrepJob.Sequence(PrepJob.Surface(material: "cadmium-plated steel", finish: "unknown", condition: ["light rust", "peeling"]))
            .The("derust").Title.ShouldStartWith("Lift rust");

    [Fact]
    public void An_old_film_that_wants_tooth_is_sanded_coarse_and_wet()
    {
        var scuff = PrepJob.Sequence(PrepJob.Surface(finish: "unknown", system: "moisture-cure-urethane")).The("scuff");

        scuff.Title.ShouldStartWith("Sand dull with P180 wet paper, kept wet");
        scuff.Why.ShouldContain("a scuff is too little");
        scuff.Why.ShouldContain("lead");
        scuff.MakesDust.ShouldBeFalse();
    }

    [Fact]
    public void A_rule_that_keeps_wet_asks_for_nothing_itself() =>
        PrepJob.Sequence(PrepJob.Surface("Brake backing plate")).Words().ShouldNotContain("derust");

    [Theory]
    [InlineData("Brake backing plate", "steel")]
    [InlineData("Clutch bell housing", "cast aluminium")]
    [InlineData("Caliper", "cast iron")]
    [InlineData("Drum", "stainless steel")]
    public void Nothing_that_may_hold_asbestos_is_brushed_dry_or_blown_off(string name, string material)
    {
        foreach (var (finish, condition, system) in Cases())
        {
            var sequence = PrepJob.Sequence(PrepJob.Surface(name, material, finish, system, condition: [condition]));

            sequence.Operations.ShouldAllBe(operation => !operation.MakesDust);
            sequence.Operations.ShouldAllBe(operation => !operation.HotWork || operation.Word == "heat-cure");
            sequence.Operations.ShouldAllBe(operation => !operation.Title.Contains("blow off"));
        }
    }

    [Fact]
    public void Every_way_of_abrasion_that_makes_dust_has_a_wet_one_beside_it()
    {
        var rules = PrepRules.Standard;
        var asked = rules.Rules.Where(rule => rule.Asks && rule.Operation is "derust" or "featheredge" or "scuff").Select(rule => rules.Way(rule.Operation, rule.Way)!);

        foreach (var way in asked.Where(way => way.Dust ?? true))
            rules.Way(way.Operation, way.Wet).ShouldNotBeNull($"{way.Operation}/{way.Way}").Dust.ShouldBe(false);
    }

    [Fact]
    public void A_wet_way_that_is_not_there_is_told()
    {
        PrepRules.Standard.With("ways:\n  scuff/ours: {wet: wett, title: \"Scuff\"}\n", "shop.yaml", out var problems);

        problems.ShouldHaveSingleItem().ToString().ShouldContain("did you mean `wet`");
    }

    private static IEnumerable<(string Finish, string Condition, string System)> Cases() =>
        from finish in Vocabulary.Contract.Finishes
        from condition in Vocabulary.Contract.Conditions
        from system in new[] { PrepJob.EtchSpotsAndEnamel, "moisture-cure-urethane", "high-heat-aerosol", "caliper-enamel-aerosol" }
        select (finish, condition, system);
}
