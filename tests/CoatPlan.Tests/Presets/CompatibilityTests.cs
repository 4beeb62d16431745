using CoatPlan.Presets;

namespace CoatPlan.Tests.Presets;

public sealed class CompatibilityTests
{
    private static readonly Catalogue Catalogue = BuiltInPresets.Read();

    [Fact]
    public void Every_class_is_judged_on_every_material()
    {
        foreach (var product in Catalogue.Products)
        {
            foreach (var material in Catalogue.Materials) Judged(Catalogue.Compatibility.OnMaterial(product.Word, material.Word), product.Word, material.Word);
        }
    }

    [Fact]
    public void Every_class_is_judged_over_every_class()
    {
        foreach (var above in Catalogue.Products)
        {
            foreach (var below in Catalogue.Products) Judged(Catalogue.Compatibility.Over(above.Word, below.Word), above.Word, below.Word);
        }
    }

    [Fact]
    public void Every_class_is_judged_over_every_old_finish()
    {
        foreach (var product in Catalogue.Products)
        {
            foreach (var finish in Catalogue.Finishes.Where(finish => finish.IsPaint))
            {
                Judged(Catalogue.Compatibility.OverFinish(product.Word, finish.Word), product.Word, finish.Word);
            }
        }
    }

    // Judged by hand from the trade's rules before the tables were asked.
    [Theory]
    [InlineData("enamel-aerosol", "steel", Verdict.Yes)]
    [InlineData("enamel-aerosol", "zinc-plated steel", Verdict.Primer)]
    [InlineData("enamel-aerosol", "rubber", Verdict.No)]
    [InlineData("etch-primer-aerosol", "aluminium", Verdict.Yes)]
    [InlineData("etch-primer-aerosol", "ABS", Verdict.No)]
    [InlineData("rust-primer-aerosol", "aluminium", Verdict.No)]
    [InlineData("rust-primer-aerosol", "zinc-plated steel", Verdict.No)]
    [InlineData("high-heat-aerosol", "cast iron", Verdict.Yes)]
    [InlineData("high-heat-aerosol", "cadmium-plated steel", Verdict.No)]
    [InlineData("polyolefin-promoter-aerosol", "polyolefin", Verdict.Yes)]
    [InlineData("polyolefin-promoter-aerosol", "steel", Verdict.No)]
    [InlineData("trim-coating-aerosol", "polyolefin", Verdict.Primer)]
    [InlineData("zinc-rich-aerosol", "cast iron", Verdict.No)]
    [InlineData("clear-aerosol", "copper alloy", Verdict.Yes)]
    [InlineData("caliper-enamel-aerosol", "cast iron", Verdict.Yes)]
    public void A_class_on_a_material(string product, string material, Verdict verdict) =>
        Catalogue.Compatibility.OnMaterial(product, material).Verdict.ShouldBe(verdict);

    [Theory]
    [InlineData("lacquer-aerosol", "enamel-aerosol", Verdict.No)]
    [InlineData("enamel-aerosol", "lacquer-aerosol", Verdict.Test)]
    [InlineData("enamel-aerosol", "zinc-rich-aerosol", Verdict.No)]
    [InlineData("enamel-aerosol", "enamel-aerosol", Verdict.Window)]
    [InlineData("underhood-black-aerosol", "etch-primer-aerosol", Verdict.Yes)]
    [InlineData("high-heat-aerosol", "filler-primer-aerosol", Verdict.No)]
    [InlineData("epoxy-primer-2k-aerosol", "etch-primer-aerosol", Verdict.No)]
    [InlineData("urethane-2k-aerosol", "moisture-cure-urethane", Verdict.Sealer)]
    [InlineData("clear-aerosol", "filler-primer-aerosol", Verdict.No)]
    [InlineData("trim-coating-aerosol", "polyolefin-promoter-aerosol", Verdict.Window)]
    public void A_class_over_a_class(string above, string below, Verdict verdict) =>
        Catalogue.Compatibility.Over(above, below).Verdict.ShouldBe(verdict);

    [Theory]
    [InlineData("underhood-black-aerosol", "factory paint", Verdict.Yes)]
    [InlineData("underhood-black-aerosol", "repaint", Verdict.Test)]
    [InlineData("moisture-cure-urethane", "unknown", Verdict.No)]
    [InlineData("etch-primer-aerosol", "factory paint", Verdict.No)]
    [InlineData("lacquer-aerosol", "powder coat", Verdict.Test)]
    public void A_class_over_an_old_finish(string product, string finish, Verdict verdict) =>
        Catalogue.Compatibility.OverFinish(product, finish).Verdict.ShouldBe(verdict);

    [Fact]
    public void No_verdict_claims_more_than_its_table_does()
    {
        var verdicts = Catalogue.Products.SelectMany(product => Catalogue.Materials.Select(material => (product, material)));

        verdicts.ShouldAllBe(pair => Catalogue.Compatibility.OnMaterial(pair.product.Word, pair.material.Word).Provenance.Status == Status.FromMemory);
    }

    [Fact]
    public void A_product_without_a_class_is_unknown_everywhere()
    {
        Catalogue.Compatibility.OnMaterial(null, "steel").ShouldBe(Compatibility.Unknown);
        Catalogue.Compatibility.Over(null, "enamel-aerosol").ShouldBe(Compatibility.Unknown);
        Catalogue.Compatibility.Over("enamel-aerosol", null).ShouldBe(Compatibility.Unknown);
        Catalogue.Compatibility.OverFinish(null, "repaint").ShouldBe(Compatibility.Unknown);
    }

    private static void Judged(Judgement judgement, string what, string on)
    {
        judgement.Verdict.ShouldNotBe(Verdict.Unknown, $"{what} / {on}");
        judgement.Reason.ShouldNotBeEmpty($"{what} / {on}");
        judgement.Provenance.Source.ShouldNotBeEmpty($"{what} / {on}");
    }
}
