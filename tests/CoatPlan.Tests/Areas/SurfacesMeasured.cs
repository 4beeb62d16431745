using CoatPlan.Areas;
using CoatPlan.Jobs;
using CoatPlan.Tests.Paint;
using CsCheck;
using UnitsNet;

namespace CoatPlan.Tests.Areas;

public sealed class SurfacesMeasured
{
    [Fact]
    public void A_figure_counts_relief_then_pieces()
    {
        var measured = Measure(PaintSamples.Panel(0.5) with { Relief = 1.15, Count = 2 });

        measured.Outline.SquareMeters.ShouldBe(0.5, 1e-12);
        measured.Piece.SquareMeters.ShouldBe(0.575, 1e-12);
        measured.Total.Likely.SquareMeters.ShouldBe(1.15, 1e-12);
        measured.Total.Low.SquareMeters.ShouldBe(1.15 * 0.85, 1e-12);
        measured.Total.High.SquareMeters.ShouldBe(1.15 * 1.15, 1e-12);
    }

    [Fact]
    public void Shapes_add_up()
    {
        var shapes = PaintSamples.Panel(1) with
        {
            Area = null,
            Shapes =
            [
                new PanelShape { Length = Length.FromMeters(1), Width = Length.FromMeters(0.5) },
                new TubeShape { Diameter = Length.FromMeters(0.1), Length = Length.FromMeters(1), Count = 2 },
            ],
        };

        Measure(shapes).Piece.SquareMeters.ShouldBe(0.5 + (0.2 * Math.PI), 1e-12);
    }

    [Fact]
    public void A_ribbed_casting_has_more_surface_than_its_outline_and_nothing_has_less()
    {
        Measure(PaintSamples.Panel(1) with { Relief = null, Material = "cast aluminium", Form = "casting" }).Relief.ShouldBe(1.35, 1e-12);
        foreach (var material in PaintSamples.Catalogue.Materials)
        {
            foreach (var form in PaintSamples.Catalogue.Forms)
                Measure(PaintSamples.Panel(1) with { Relief = null, Material = material.Word, Form = form.Word }).Relief.ShouldBeGreaterThanOrEqualTo(1);
        }
    }

    [Fact]
    public void Bare_metal_is_all_bare_and_paint_as_bare_as_its_worst_condition()
    {
        Measure(PaintSamples.Panel(1) with { Finish = "bare" }).BareShare.DecimalFractions.ShouldBe(1);
        Measure(PaintSamples.Panel(1) with { Conditions = ["sound", "chips", "scaly rust"] }).BareShare.DecimalFractions
            .ShouldBe(PaintSamples.Catalogue.Condition("scaly rust").BareShare);
        Measure(PaintSamples.Panel(1) with { BareShare = Ratio.FromPercent(33) }).BareShare.Percent.ShouldBe(33, 1e-12);
    }

    [Fact]
    public void Gauge_and_faces_follow_the_material_unless_said()
    {
        Measure(PaintSamples.Panel(1) with { Material = "cast iron" }).FacesInAir.ShouldBe(1);
        Measure(PaintSamples.Panel(1)).FacesInAir.ShouldBe(2);
        Measure(PaintSamples.Panel(1)).Gauge.ShouldBe(PaintSamples.Catalogue.Material("steel").Gauge);
        Measure(PaintSamples.Panel(1) with { Gauge = Length.FromMillimeters(3) }).Gauge.Millimeters.ShouldBe(3, 1e-12);
    }

    [Fact]
    public void A_cut_never_adds() =>
        Gen.Select(Gen.Double[0.1, 5], Gen.Double[0.1, 5], Gen.Double[0.01, 0.1], Gen.Int[1, 4]).Sample((length, width, hole, count) =>
        {
            var whole = new PanelShape { Length = Length.FromMeters(length), Width = Length.FromMeters(width), Count = count };
            var cut = whole with { Less = [new DiscShape { Diameter = Length.FromMeters(hole) }] };
            return ShapeArea.Of(cut) < ShapeArea.Of(whole) && ShapeArea.Of(cut) > Area.Zero;
        });

    [Fact]
    public void A_spread_of_all_of_it_is_refused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => AreaRange.Around(Area.FromSquareMeters(1), Ratio.FromPercent(100)));

    private static MeasuredSurface Measure(JobSurface surface) => SurfaceAreas.Measure(surface, PaintSamples.Catalogue);
}
