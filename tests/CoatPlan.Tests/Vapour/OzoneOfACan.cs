using CoatPlan.Presets;
using CoatPlan.Tests.Paint;
using CoatPlan.Vapour;
using UnitsNet;

namespace CoatPlan.Tests.Vapour;

/// <summary>The product-weighted reactivity of 40 CFR 59.505: Σ factor × share by mass.</summary>
public sealed class OzoneOfACan
{
    [Fact]
    public void An_enamel_worked_by_hand()
    {
        // acetone 27 % × 0.36, propane 17 × 0.49, n-butane 9 × 1.15, VM&P naphtha 8 × 1.44, xylene 7 × 7.74, n-butyl acetate 4 × 0.84,
        // mineral spirits 4 × 1.57, ethylbenzene 1 × 3.04: 9.72 + 8.33 + 10.35 + 11.52 + 54.18 + 3.36 + 6.28 + 3.04 = 106.78 % of its mass, 12 oz are 340.19 g.
        var ozone = OzoneForming.Of(PaintSamples.Label("enamel-aerosol"), PaintSamples.Catalogue.Figures)!;

        ozone.GramsPerGram.ShouldBe(1.0678, 1e-9);
        ozone.PerPackage!.Value.Grams.ShouldBe(340.194 * 1.0678, 0.01);
    }

    [Fact]
    public void Water_and_traces_count_nothing()
    {
        var converter = PaintSamples.Label("rust-converter");
        var trace = PaintSamples.Label() with { Solvents = [new SolventContent(PaintSamples.Catalogue.Solvent("xylene")!, Ratio.FromPercent(0.09))] };

        OzoneForming.Of(converter, PaintSamples.Catalogue.Figures)!.GramsPerGram.ShouldBe(0.05 * 2.90, 1e-9);
        OzoneForming.Of(trace, PaintSamples.Catalogue.Figures)!.GramsPerGram.ShouldBe(0);
    }

    /// <summary>Under the least share a part counts nothing; at it, it counts.</summary>
    [Fact]
    public void A_part_just_at_the_least_share_counts()
    {
        var least = PaintSamples.Catalogue.Figures.Share("ozone-least-share");
        var label = PaintSamples.Label() with { Solvents = [new SolventContent(PaintSamples.Catalogue.Solvent("xylene")!, least)] };

        OzoneForming.Of(label, PaintSamples.Catalogue.Figures)!.GramsPerGram.ShouldBe(0.001 * 7.74, 1e-9);
    }

    [Fact]
    public void A_sheet_that_does_not_allow_the_sum_gives_none()
    {
        var unknown = PaintSamples.Label() with { Solvents = [new SolventContent(VapourSamples.Solvent(), Ratio.FromPercent(10))] };

        OzoneForming.Of(unknown, PaintSamples.Catalogue.Figures).ShouldBeNull();
        OzoneForming.Of(PaintSamples.Label() with { Solvents = [] }, PaintSamples.Catalogue.Figures).ShouldBeNull();
    }

    [Fact]
    public void Every_class_allows_it() =>
        PaintSamples.Catalogue.Products.ShouldAllBe(product => OzoneForming.Of(PaintSamples.Label(product.Word, "can"), PaintSamples.Catalogue.Figures) != null);
}
