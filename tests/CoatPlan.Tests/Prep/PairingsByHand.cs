using UnitsNet;

namespace CoatPlan.Tests.Prep;

/// <summary>
/// Pairings of product, material, old finish and heat, judged by hand from the compatibility tables before the program judged them; the letter or number
/// after a row is the reason there. Verdicts are common practice or from memory, as the tables say.
/// </summary>
public class PairingsByHand
{
    private static readonly string[] PairingCodes =
    [
        "not-on-material", "not-over-finish", "lifts-coat-below", "too-hot", "needs-primer", "no-primer-wanted", "gloss-under-rust-bonding",
        "test-patch", "spot-prime",
    ];

    [Theory]
    [InlineData("enamel-aerosol", "steel", "bare", "sound", 0, "")] // A
    [InlineData("enamel-aerosol", "aluminium", "bare", "sound", 0, "needs-primer")] // B
    [InlineData("etch-primer-aerosol+enamel-aerosol", "aluminium", "bare", "sound", 0, "")] // O, 18
    [InlineData("enamel-aerosol", "zinc-plated steel", "bare", "sound", 0, "needs-primer")] // C
    [InlineData("rust-primer-aerosol+enamel-aerosol", "zinc-plated steel", "bare", "sound", 0, "not-on-material")] // C
    [InlineData("enamel-aerosol", "polyolefin", "bare", "sound", 0, "needs-primer")] // G
    [InlineData("polyolefin-promoter-aerosol+enamel-aerosol", "polyolefin", "bare", "sound", 0, "")] // W, 20
    [InlineData("polyolefin-promoter-aerosol+enamel-aerosol", "steel", "bare", "sound", 0, "not-on-material")] // W
    [InlineData("lacquer-aerosol", "ABS", "bare", "sound", 0, "needs-primer")] // J
    [InlineData("high-heat-aerosol", "steel", "bare", "sound", 900, "")] // L
    [InlineData("high-heat-aerosol", "zinc-plated steel", "bare", "sound", 0, "not-on-material")] // M
    [InlineData("etch-primer-aerosol+high-heat-aerosol", "steel", "bare", "sound", 900, "no-primer-wanted too-hot")] // 7; etch stands 250 °F
    [InlineData("underhood-black-aerosol", "steel", "factory paint", "sound", 0, "")] // 2
    [InlineData("underhood-black-aerosol", "steel", "repaint", "sound", 0, "test-patch")] // 5
    [InlineData("lacquer-aerosol", "steel", "factory paint", "sound", 0, "test-patch")] // 2
    [InlineData("engine-enamel-aerosol", "cast iron", "unknown", "sound", 300, "not-over-finish")] // 21
    [InlineData("etch-primer-aerosol+enamel-aerosol", "steel", "factory paint", "sound", 0, "not-over-finish")] // 8
    [InlineData("~etch-primer-aerosol+enamel-aerosol", "steel", "factory paint", "chips", 0, "")] // O on the spots, 2 on the paint
    [InlineData("enamel-aerosol+lacquer-aerosol", "steel", "bare", "sound", 0, "lifts-coat-below")] // 4
    [InlineData("moisture-cure-urethane", "steel", "factory paint", "sound", 0, "gloss-under-rust-bonding test-patch")] // 12
    [InlineData("moisture-cure-urethane", "steel", "bare", "light rust", 0, "")] // T
    [InlineData("rust-converter+enamel-aerosol", "steel", "bare", "scaly rust", 0, "")] // S on rust, 17
    [InlineData("rust-converter+enamel-aerosol", "steel", "bare", "sound", 0, "not-on-material")] // S
    [InlineData("rust-converter+enamel-aerosol", "aluminium", "bare", "pitted", 0, "not-on-material")] // S: no iron, nothing to convert
    [InlineData("zinc-rich-aerosol+enamel-aerosol", "steel", "bare", "sound", 0, "lifts-coat-below")] // 6
    [InlineData("zinc-rich-aerosol+epoxy-primer-2k-aerosol+urethane-2k-aerosol", "steel", "bare", "sound", 0, "")] // V, 14, 2
    [InlineData("etch-primer-aerosol+epoxy-primer-2k-aerosol", "aluminium", "bare", "sound", 0, "lifts-coat-below")] // 9
    [InlineData("epoxy-primer-2k-aerosol+urethane-2k-aerosol", "cadmium-plated steel", "bare", "sound", 0, "")] // D, 2
    [InlineData("etch-primer-aerosol+urethane-2k-aerosol", "steel", "bare", "sound", 0, "lifts-coat-below")] // 9: sealer
    [InlineData("enamel-aerosol", "steel", "bare", "sound", 300, "too-hot")] // stands 200 °F
    [InlineData("caliper-enamel-aerosol", "cast iron", "bare", "sound", 446, "too-hot")] // stands 350 °F for good
    [InlineData("engine-enamel-aerosol", "cast iron", "bare", "sound", 300, "")] // A; stands 350 °F
    [InlineData("clear-aerosol", "copper alloy", "bare", "sound", 0, "")] // Z
    [InlineData("clear-aerosol", "steel", "bare", "sound", 0, "not-on-material")] // Y
    [InlineData("filler-primer-aerosol+enamel-aerosol", "steel", "bare", "sound", 0, "needs-primer")] // R
    [InlineData("trim-coating-aerosol", "ABS", "bare", "sound", 0, "")] // F
    [InlineData("engine-enamel-aerosol", "ABS", "bare", "sound", 0, "not-on-material")] // K
    [InlineData("enamel-aerosol", "rubber", "bare", "sound", 0, "not-on-material")] // H
    [InlineData("enamel-aerosol", "polyolefin", "factory paint", "scratches", 0, "spot-prime")] // G on the spots, 2
    [InlineData("~rust-primer-aerosol+underhood-black-aerosol", "aluminium", "factory paint", "chips", 0, "not-on-material")] // B
    [InlineData("enamel-aerosol", "steel", "powder coat", "sound", 0, "")] // 2
    [InlineData("trim-coating-aerosol", "steel", "powder coat", "sound", 0, "test-patch")] // 2
    [InlineData("high-heat-aerosol", "steel", "factory paint", "sound", 0, "not-over-finish")] // 7
    public void A_pairing_is_warned_of_as_judged_by_hand(string system, string material, string finish, string condition, double heatF, string expected)
    {
        var surface = PrepJob.Surface(material: material, finish: finish, system: system, condition: [condition]) with
        {
            Heat = heatF > 0 ? Temperature.FromDegreesFahrenheit(heatF) : null,
        };

        var codes = PrepJob.Sequence(surface).Codes().Intersect(PairingCodes).Order();

        string.Join(' ', codes).ShouldBe(string.Join(' ', expected.Split(' ').Order()));
    }

    [Fact]
    public void A_warning_names_the_surface_and_the_product_it_is_about()
    {
        var warning = PrepJob.Sequence(PrepJob.Surface("Timing cover", "cast aluminium", system: PrepJob.Enamel)).Warnings
            .Single(warning => warning.Code == "needs-primer");

        warning.Surface.ShouldBe("timing-cover");
        warning.Product.ShouldBe(PrepJob.Enamel);
        warning.Text.ShouldContain("Timing cover");
        warning.Text.ShouldContain("Add a primer");
    }

    [Fact]
    public void A_coat_that_goes_on_twice_is_warned_of_once()
    {
        var warnings = PrepJob.Sequence(PrepJob.Surface(system: "zinc-rich-aerosol+enamel-aerosol", finish: "repaint", condition: ["chips"])).Warnings;

        warnings.Count(warning => warning.Code == "lifts-coat-below").ShouldBe(1);
    }
}
