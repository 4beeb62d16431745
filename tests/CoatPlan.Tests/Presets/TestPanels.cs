using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Presets;
using CoatPlan.Tests.Paint;
using UnitsNet;

namespace CoatPlan.Tests.Presets;

/// <summary>What a sprayed panel gave counts for the can in hand.</summary>
public sealed class TestPanels
{
    private static readonly TestPanel Panel = new() { Product = "black", Area = Area.FromSquareFeet(1), Coats = 3 };

    [Fact]
    public void Coverage_follows_from_two_weighings()
    {
        // 3 ft² of coats took 78 g of a can of 340.19 g: one can covers 3 × 340.19 / 78 = 13.08 ft².
        var label = Of(Panel with { Used = new Amount { Mass = Mass.FromGrams(78) } });

        label.Covers!.Value.SquareFeet.ShouldBe(3 * 340.194 / 78, 1e-3);
        label.CoversMeasured.ShouldBeTrue();
        PackageReach.Of(label).BySolids.ShouldBeNull();
        PackageReach.Of(label).Area!.Value.SquareFeet.ShouldBe(13.08, 0.01);
    }

    [Fact]
    public void A_measured_coverage_spreads_less_than_a_labels()
    {
        var job = PaintSamples.Job([PaintSamples.Panel(6)]);
        var asLabelled = PaintSamples.Demand(job, PaintSamples.Label() with { Covers = Area.FromSquareFeet(13.08), SolidsByVolume = null });
        var measured = PaintSamples.Demand(job, Of(Panel with { Used = new Amount { Mass = Mass.FromGrams(78) } }));

        measured.Likely.ShouldBe(asLabelled.Likely, 0.001 * measured.Likely);
        (measured.CansHigh - measured.CansLow).ShouldBeLessThan(asLabelled.CansHigh - asLabelled.CansLow);
    }

    [Fact]
    public void Film_is_that_of_all_coats_over_their_number() =>
        Of(Panel with { Film = Length.FromMicrometers(66) }).DryFilm!.Value.Micrometers.ShouldBe(22, 1e-9);

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(3, 3)]
    public void Coats_that_hid_black_and_white_on_the_panel_hide_on_the_job(int hidesAfter, int coats)
    {
        // White over black asks for the contrast ratio itself.
        var white = Of(Panel with { HidesAfter = hidesAfter }) with { Lightness = 95 };

        HidingCoats.Over(below: 0, white, PaintSamples.Catalogue.Figures).ShouldBe(coats);
    }

    [Fact]
    public void A_film_that_dries_slower_than_its_label_waits_longer_and_a_quicker_one_no_less()
    {
        // At 60 °F, 5.56 K under the label's 70 °F, with a factor of 2 for 10 K: 60 min there are 60 × 2^-0.556 = 40.8 min at 70 °F, against 25 of the label.
        var usual = PaintSamples.Label();
        var slow = Of(Panel with { Times = new LabelTimes { Touch = Duration.FromMinutes(60), Handle = Duration.FromMinutes(30) }, Air = Temperature.FromDegreesFahrenheit(60) });

        slow.Times.Touch.TotalMinutes.ShouldBe(60 * Math.Pow(2, -10 / 1.8 / 10), 0.02);
        slow.Times.Handle.ShouldBe(usual.Times.Handle);
        slow.Times.Through.ShouldBe(usual.Times.Through);
        slow.Origins["times"].ShouldBe(Origin.Panel);
    }

    [Fact]
    public void The_later_of_two_panels_counts_and_those_of_another_product_do_not()
    {
        var first = Panel with { Used = new Amount { Count = 0.5 } };
        var second = Panel with { Used = new Amount { Count = 0.25 } };
        var other = Panel with { Product = "etch", Used = new Amount { Count = 0.01 } };

        Of(first, second, other).Covers!.Value.SquareFeet.ShouldBe(12, 1e-9);
    }

    [Fact]
    public void A_panel_of_a_job_file_reaches_the_label()
    {
        const string text = """
            coatplan: 1
            job: Bench
            start: 2027-05-14 08:00
            place: {outdoors: true, weather: {steady: {air: 70 °F, humidity: 50 %}}}
            crew: {people: 1, hours: {Mon-Sun: 08:00-18:00}}
            products: {black: {preset: underhood-black-aerosol}}
            systems: {s: [{product: black}]}
            surfaces: [{name: Panel, material: steel, area: 8 ft2, system: s}]
            test-panels:
              - {product: black, area: 1 ft2, coats: 3, used: 78 g, hides-after: 2, film: 66 µm, times: {touch: 40 min}, air: 70 °F}
            """;

        var ready = JobIntake.Read(text, "bench.job.yaml", Trade.Standard, _ => FileText.Unreadable("none")).Ready!;

        var label = ready.Labels["black"];
        label.Covers!.Value.SquareFeet.ShouldBe(13.08, 0.01);
        label.HidesAfter.ShouldBe(2);
        label.Times.Touch.ShouldBe(Duration.FromMinutes(40));
    }

    [Theory]
    [InlineData("{product: blck, area: 1 ft2, coats: 3}", "no product `blck` is defined")]
    [InlineData("{product: black, area: 1 ft2, coats: 3, hides-after: 4}", "at most `coats`")]
    [InlineData("{product: black, area: 1 ft2, coats: 3, used: 4 ft}", "a mass, a volume or a share of a package")]
    [InlineData("{product: black, coats: 3}", "`area` is missing")]
    public void A_mistake_in_a_panel_is_told(string panel, string told)
    {
        var text = $$$$"""
            coatplan: 1
            job: Bench
            start: 2027-05-14 08:00
            place: {outdoors: true, weather: {steady: {air: 70 °F, humidity: 50 %}}}
            crew: {people: 1, hours: {Mon-Sun: 08:00-18:00}}
            products: {black: {preset: underhood-black-aerosol}}
            systems: {s: [{product: black}]}
            surfaces: [{name: Panel, material: steel, area: 8 ft2, system: s}]
            test-panels: [{{{{panel}}}}]
            """;

        JobReader.Read(text, "bench.job.yaml", Trade.Standard.Catalogue.Vocabulary).Problems.ShouldHaveSingleItem().ToString().ShouldContain(told);
    }

    private static Label Of(params TestPanel[] panels) => PanelReadings.Over(PaintSamples.Label(), [.. panels]);
}
