using CoatPlan.Air;
using CoatPlan.Jobs;
using CoatPlan.Tests.Paint;
using CoatPlan.Tests.Vapour;
using UnitsNet;

namespace CoatPlan.Tests.Air;

/// <summary>Averages of each solvent, what a respirator may be worn in, and how long its cartridges last.</summary>
public sealed class LimitsBesideFigures
{
    private static readonly LocalDateTime Start = new(2027, 5, 15, 9, 0);

    [Fact]
    public void A_steady_hour_averages_to_itself_over_a_quarter_and_to_an_eighth_over_a_shift()
    {
        // 60 g of 100 g/mol in an hour into 20 m³/min: 1 g a minute, 24.45 L/100 = 0.2445 L in 20 m³ = 12.225 ppm; the small room fills and clears within minutes.
        var release = new DatedRelease("a", Start, Start.PlusMinutes(60), VapourSamples.Release(VapourSamples.Solvent(), 60, 0));

        var one = WorkAir.Of(Place(4, 20), [release], VapourSamples.Figures).BySolvent.ShouldHaveSingleItem();

        one.Peak.PartsPerMillion.ShouldBe(12.225, 1e-6);
        one.ShortTerm.PartsPerMillion.ShouldBe(12.225, 1e-6);
        one.Shift.PartsPerMillion.ShouldBe(12.225 / 8, 0.001);
    }

    // 29 CFR 1910.134(d)(3)(i)(B), worked in the check values: acetone, half mask, 10 × 1000 = 10 000 ppm, capped by IDLH to 2500; here the lower
    // recommended limit of 250 ppm counts, 10 × 250 = 2500, so the full face meets the cap.
    [Fact]
    public void A_mask_is_worn_up_to_its_factor_and_never_above_what_is_dangerous()
    {
        var acetone = new SolventExposure(PaintSamples.Catalogue.Solvent("acetone")!, Ratio.Zero, Ratio.Zero, Ratio.Zero);
        var toluene = new SolventExposure(PaintSamples.Catalogue.Solvent("toluene")!, Ratio.Zero, Ratio.Zero, Ratio.Zero);

        acetone.MaximumUse(10)!.Value.PartsPerMillion.ShouldBe(2500, 1e-6);
        acetone.MaximumUse(50)!.Value.PartsPerMillion.ShouldBe(2500, 1e-6);
        toluene.MaximumUse(10)!.Value.PartsPerMillion.ShouldBe(500, 1e-6);
        new SolventExposure(VapourSamples.Solvent(limitPpm: null), Ratio.Zero, Ratio.Zero, Ratio.Zero).MaximumUse(10).ShouldBeNull();
    }

    // 8 h at 200 ppm; a tenth of the concentration gives five times the life, so ten times takes 8/5 h: the exponent 0.70 is log 5. Above 85 % humidity half.
    // Source: rule of thumb in agency guidance, as in the presets.
    [Theory]
    [InlineData(200, 50, 8)]
    [InlineData(20, 50, 8)]
    [InlineData(2000, 50, 8 / 5.0)]
    [InlineData(2000, 85, 4 / 5.0)]
    [InlineData(2000, 75, 6 / 5.0)]
    [InlineData(200, 95, 4)]
    public void A_cartridge_lasts_by_the_rule_of_thumb(double ppm, double humidity, double hours) =>
        CartridgeLife.ByRule(Ratio.FromPartsPerMillion(ppm), Ratio.FromPercent(humidity), PaintSamples.Catalogue.Figures).TotalHours.ShouldBe(hours, 0.005 * hours);

    [Fact]
    public void What_boils_low_shortens_it_to_two_hours_and_the_advice_says_why()
    {
        var acetone = PaintSamples.Catalogue.Solvent("acetone")!;
        var release = new DatedRelease("a", Start, Start.PlusMinutes(10), VapourSamples.Release(acetone, 50, 0));
        var report = WorkAir.Of(Place(100, 20), [release], PaintSamples.Catalogue.Figures);
        var hazards = new BreathingHazards { Products = [], Sprays = true, MakesDust = false, MayHoldLead = false };

        var advice = RespiratorChoice.For(report, hazards, PaintSamples.Catalogue);

        report.BoilsLow.ShouldBe(["acetone"]);
        report.CartridgeLoad.ShouldBe(Ratio.Zero);
        advice.CartridgeLife.ShouldBe(Duration.FromHours(2));
        advice.Factor.ShouldBe(10);
        advice.Why.ShouldContain(why => why.StartsWith("Change cartridges after 2 h", StringComparison.Ordinal) && why.Contains("acetone", StringComparison.Ordinal));
        advice.Why.ShouldContain(why => why.Contains("Nearest to its maximum use concentration is acetone", StringComparison.Ordinal) && why.Contains("of 2500 ppm", StringComparison.Ordinal));
    }

    [Fact]
    public void Outdoors_cartridges_that_hardly_hold_what_is_sprayed_are_changed_as_soon()
    {
        var release = new DatedRelease("a", Start, Start.PlusMinutes(10), VapourSamples.Release(PaintSamples.Catalogue.Solvent("propane")!, 50, 0));
        var report = WorkAir.Of(Place(100, 20) with { Volume = null, Outdoors = true }, [release], PaintSamples.Catalogue.Figures);

        var advice = RespiratorChoice.For(report, new BreathingHazards { Products = [], Sprays = true, MakesDust = false, MayHoldLead = false }, PaintSamples.Catalogue);

        advice.CartridgeLife.ShouldBe(Duration.FromHours(2));
    }

    [Fact]
    public void Supplied_air_has_no_cartridge_to_change()
    {
        var release = new DatedRelease("a", Start, Start.PlusMinutes(10), VapourSamples.Release(VapourSamples.Solvent(), 5, 0));
        var report = WorkAir.Of(Place(100, 20), [release], PaintSamples.Catalogue.Figures);
        var hazards = new BreathingHazards { Products = [PaintSamples.Label("urethane-2k-aerosol")], Sprays = true, MakesDust = false, MayHoldLead = false };

        var advice = RespiratorChoice.For(report, hazards, PaintSamples.Catalogue);

        advice.CartridgeLife.ShouldBeNull();
        advice.Factor.ShouldBe(1000);
    }

    private static Place Place(double cubicMetres, double exhaust) => new()
    {
        Volume = Volume.FromCubicMeters(cubicMetres),
        Exhaust = VolumeFlow.FromCubicMetersPerMinute(exhaust),
        Mixing = 1,
        Weather = new SteadyWeather { Air = Temperature.FromDegreesCelsius(21), Humidity = Ratio.FromPercent(50) },
    };
}
