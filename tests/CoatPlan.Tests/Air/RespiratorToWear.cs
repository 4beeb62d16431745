using CoatPlan.Air;
using CoatPlan.Quantities;
using CoatPlan.Tests.Paint;
using CoatPlan.Tests.Vapour;
using CoatPlan.Vapour;
using UnitsNet;

namespace CoatPlan.Tests.Air;

public sealed class RespiratorToWear
{
    [Fact]
    public void Spraying_outdoors_still_takes_a_half_mask() =>
        Kind(Report(mixture: 0), Sprays()).ShouldStartWith("half mask, organic-vapour cartridges");

    [Theory]
    [InlineData(9.9, "half mask")]
    [InlineData(10.1, "full-face mask")]
    [InlineData(50.1, "supplied air")]
    public void The_mask_follows_the_mixture(double mixture, string kind) =>
        Kind(Report(mixture), Sprays()).ShouldStartWith(kind);

    [Fact]
    public void Past_what_supplied_air_may_be_worn_in_nobody_enters() =>
        Kind(Report(mixture: 1001), Sprays()).ShouldStartWith("do not enter");

    [Fact]
    public void Isocyanate_takes_supplied_air_however_little_there_is()
    {
        var advice = RespiratorChoice.For(Report(mixture: 0.01), Sprays("urethane-2k-aerosol"), PaintSamples.Catalogue);

        advice.Kind.ShouldStartWith("supplied air");
        advice.Why[0].ShouldContain("isocyanate");
    }

    [Fact]
    public void Propellant_over_its_limit_takes_air_from_outside() =>
        Kind(Report(mixture: 2) with { PropellantRatio = 1.2 }, Sprays()).ShouldStartWith("supplied air");

    [Fact]
    public void A_tenth_of_the_explosive_limit_and_a_dangerous_peak_keep_everybody_out()
    {
        Kind(Report(mixture: 5, lel: 0.10), Sprays()).ShouldStartWith("do not enter");
        Kind(Report(mixture: 5, lel: 0.0999), Sprays()).ShouldStartWith("half mask");

        var deadly = VapourSamples.Solvent() with { Idlh = VapourSamples.Limit(500) };
        Kind(Report(mixture: 5, peak: new SolventPeak(deadly, Ratio.FromPartsPerMillion(501))), Sprays()).ShouldStartWith("do not enter");
        Kind(Report(mixture: 5, peak: new SolventPeak(deadly, Ratio.FromPartsPerMillion(499))), Sprays()).ShouldStartWith("half mask");
    }

    [Fact]
    public void Sanding_alone_takes_a_dust_filter_and_a_finer_one_over_lead()
    {
        var dust = new BreathingHazards { Products = [], Sprays = false, MakesDust = true, MayHoldLead = false };
        var still = Report(mixture: 0) with { ByStep = [] };

        Kind(still, dust).ShouldContain("N95");
        Kind(still, dust with { MayHoldLead = true }).ShouldContain("P100");
    }

    [Fact]
    public void A_dust_filter_is_named_as_not_enough_for_vapour() =>
        RespiratorChoice.For(Report(mixture: 1), Sprays() with { MakesDust = true }, PaintSamples.Catalogue).Why
            .ShouldContain(why => why.Contains("holds no vapour", StringComparison.Ordinal));

    [Fact]
    public void Warnings_name_the_limit_the_step_and_the_exhaust_that_mends_it()
    {
        var report = Report(mixture: 4, lel: 0.2) with { ExhaustForLimit = VolumeFlow.FromCubicMetersPerMinute(30), ExhaustForLel = VolumeFlow.FromCubicMetersPerMinute(9) };

        var warnings = AirWarnings.Of(report, PaintSamples.Catalogue.Figures, QuantityFormat.Metric, key => key, id => id);

        warnings.Select(warning => warning.Code).ShouldBe(["over-lel", "over-limit"]);
        warnings[1].Text.ShouldContain("An exhaust of 30 m³/min keeps it under");
        warnings[1].Text.ShouldContain("coat-1");
        AirWarnings.Of(report, PaintSamples.Catalogue.Figures, QuantityFormat.Us, key => key, id => id)[1].Text.ShouldContain("An exhaust of 1,059 ft³/min keeps it under");
        AirWarnings.Of(Report(mixture: 0.9), PaintSamples.Catalogue.Figures, QuantityFormat.Metric, key => key, id => id).ShouldBeEmpty();
    }

    private static string Kind(AirReport report, BreathingHazards hazards) => RespiratorChoice.For(report, hazards, PaintSamples.Catalogue).Kind;

    private static BreathingHazards Sprays(string preset = "enamel-aerosol") =>
        new() { Products = [PaintSamples.Label(preset)], Sprays = true, MakesDust = false, MayHoldLead = false };

    private static AirReport Report(double mixture, double lel = 0, params ImmutableArray<SolventPeak> peak) => new()
    {
        Room = new WorkRoom(Volume.FromCubicMeters(100), VolumeFlow.FromCubicMetersPerMinute(20), 5),
        ByStep = [new StepAir("coat-1", peak.IsDefault ? [] : peak, mixture, lel, Duration.Zero)],
        TwaMixtureRatio = mixture / 10,
        PropellantRatio = 0,
        ShortLimitsPassed = [],
        WithoutLimit = [],
        ExhaustForLimit = null,
        ExhaustForLel = null,
        DilutionForLimit = null,
    };
}
