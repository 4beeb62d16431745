using CoatPlan.Jobs;
using CoatPlan.Prep;

namespace CoatPlan.Tests.Prep;

public class WaysOfMaterials
{
    [Theory]
    [InlineData("steel", "scaly rust", "Take off scale with a wire wheel")]
    [InlineData("cast iron", "light rust", "Wire-brush off the rust")]
    [InlineData("aluminium", "white corrosion", "no steel wire")]
    [InlineData("cast aluminium", "pitted", "no steel wire")]
    [InlineData("stainless steel", "light rust", "no steel wire")]
    [InlineData("copper alloy", "white corrosion", "no steel wire")]
    [InlineData("zinc-plated steel", "white corrosion", "kept wet")]
    [InlineData("cadmium-plated steel", "light rust", "kept wet")]
    public void Each_material_loses_its_corrosion_in_its_own_way(string material, string condition, string title) =>
        PrepJob.Sequence(PrepJob.Surface(material: material, condition: [condition])).The("derust").Title.ShouldContain(title);

    [Theory]
    [InlineData("ABS", "P400")]
    [InlineData("fibreglass", "P400")]
    [InlineData("polyolefin", "P600")]
    [InlineData("steel", "P320")]
    public void Each_material_is_abraded_to_its_own_grit(string material, string last) =>
        PrepJob.Sequence(PrepJob.Surface(material: material)).The("scuff").Grits[^1].ShouldBe(last);

    [Theory]
    [InlineData("sound")]
    [InlineData("light rust")]
    [InlineData("scaly rust")]
    [InlineData("white corrosion")]
    [InlineData("burnt")]
    [InlineData("peeling")]
    [InlineData("chips")]
    public void Cadmium_is_never_sanded_dry_nor_brushed_nor_heated(string condition)
    {
        foreach (var finish in new[] { "bare", "factory paint", "powder coat", "unknown" })
        {
            var sequence = PrepJob.Sequence(PrepJob.Surface(
                material: "cadmium-plated steel", finish: finish, system: "~etch-primer-aerosol+high-heat-aerosol", condition: [condition]));

            sequence.Operations.ShouldAllBe(operation => !operation.MakesDust);
            sequence.Operations.ShouldAllBe(operation => !operation.HotWork);
        }
    }

    [Theory]
    [InlineData("sound")]
    [InlineData("white corrosion")]
    [InlineData("light rust")]
    public void Zinc_is_never_abraded_dry(string condition) =>
        PrepJob.Sequence(PrepJob.Surface(material: "zinc-plated steel", condition: [condition]))
            .Operations.ShouldAllBe(operation => !operation.MakesDust);

    [Theory]
    [InlineData("ABS")]
    [InlineData("polyolefin")]
    [InlineData("fibreglass")]
    public void Plastics_are_cleaned_with_what_does_not_craze_them(string material)
    {
        var sequence = PrepJob.Sequence(PrepJob.Surface(material: material));

        sequence.The("solvent-clean").Title.ShouldContain("made for plastics");
        sequence.The("final-wipe").Title.ShouldContain("made for plastics");
    }

    [Fact]
    public void Light_tight_rust_stays_under_a_rust_bonding_coating()
    {
        var bonding = PrepJob.Sequence(PrepJob.Surface(system: "moisture-cure-urethane", condition: ["light rust"]));
        var enamel = PrepJob.Sequence(PrepJob.Surface(system: PrepJob.EtchAndEnamel, condition: ["light rust"]));

        bonding.The("derust").Title.ShouldContain("leave what is tight");
        enamel.The("derust").Title.ShouldNotContain("leave what is tight");
    }

    [Theory]
    [InlineData("rust-primer-aerosol+enamel-aerosol", true)]
    [InlineData("enamel-aerosol", true)]
    [InlineData("etch-primer-aerosol+enamel-aerosol", false)]
    [InlineData("epoxy-primer-2k-aerosol+enamel-aerosol", false)]
    [InlineData("moisture-cure-urethane", false)]
    [InlineData("rust-converter+enamel-aerosol", false)]
    public void Pits_are_converted_only_under_what_goes_over_converter(string system, bool converted) =>
        PrepJob.Sequence(PrepJob.Surface(system: system, condition: ["pitted"])).Words().Contains("convert").ShouldBe(converted);

    [Theory]
    [InlineData("high-heat-aerosol")]
    [InlineData("zinc-rich-aerosol")]
    public void What_holds_to_bright_metal_only_gets_it(string system) =>
        PrepJob.Sequence(PrepJob.Surface(system: system, condition: ["light rust"])).The("derust").Title.ShouldContain("bright metal");

    [Fact]
    public void A_film_cured_by_heat_gets_its_stages_and_a_wait_as_long()
    {
        var cure = PrepJob.Sequence(PrepJob.Surface(system: "high-heat-aerosol")).The("heat-cure");

        cure.HotWork.ShouldBeTrue();
        cure.Wait.Kind.ShouldBe(WaitKind.Dwell);
        cure.Wait.Time.ShouldBeGreaterThan(Duration.FromHours(1));
    }

    [Fact]
    public void The_heats_of_a_cure_are_told_in_the_units_of_the_job()
    {
        var job = PrepJob.Of(PrepJob.Surface(system: "high-heat-aerosol"));

        PrepJob.Sequence(job).The("heat-cure").Wait.Why.ShouldContain("250 °F for 30 min, 400 °F for 30 min");
        PrepJob.Sequence(job with { Units = PrintUnits.Metric }).The("heat-cure").Wait.Why.ShouldContain("121 °C for 30 min, 204 °C for 30 min");
    }

    // Three heats of 30 min, and half an hour of cooling in each of the two pauses between them.
    [Fact]
    public void A_film_cools_between_two_heats_and_not_after_the_last() =>
        PrepJob.Sequence(PrepJob.Surface(system: "high-heat-aerosol")).The("heat-cure").Wait.Time.ShouldBe(Duration.FromMinutes((3 * 30) + (2 * 30)));
}
