using CoatPlan.Areas;
using CoatPlan.Jobs;
using UnitsNet;

namespace CoatPlan.Tests.Areas;

public sealed class ShapeAreas
{
    private const double SquareInch = 0.00064516;

    private static Length In(double inches) => Length.FromInches(inches);

    private static double SquareInches(Shape shape) => ShapeArea.Of(shape).SquareMeters / SquareInch;

    [Fact]
    public void A_panel_counts_the_sides_that_are_asked()
    {
        SquareInches(new PanelShape { Length = In(12), Width = In(8) }).ShouldBe(96, 1e-9);
        SquareInches(new PanelShape { Length = In(12), Width = In(8), Sides = 2 }).ShouldBe(192, 1e-9);
    }

    [Fact]
    public void A_disc_of_two_inches_has_pi_square_inches() =>
        SquareInches(new DiscShape { Diameter = In(2) }).ShouldBe(Math.PI, 1e-9);

    [Fact]
    public void A_ring_is_its_disc_without_the_hole()
    {
        var ring = new RingShape { Outer = In(7), Inner = In(3), Sides = 2 };

        SquareInches(ring).ShouldBe(SquareInches(new DiscShape { Diameter = In(7), Sides = 2 })
            - SquareInches(new DiscShape { Diameter = In(3), Sides = 2 }), 1e-9);
    }

    [Theory]
    [InlineData(6, 2 * ((12 * 8) + (12 * 5) + (8 * 5)))]
    [InlineData(5, (12 * 8) + (2 * ((12 * 5) + (8 * 5))))]
    [InlineData(4, 2 * ((12 * 5) + (8 * 5)))]
    public void A_box_leaves_out_its_top_then_its_bottom(int faces, double squareInches) =>
        SquareInches(new BoxShape { Length = In(12), Width = In(8), Height = In(5), Faces = faces }).ShouldBe(squareInches, 1e-9);

    [Fact]
    public void A_tube_adds_its_ends_and_its_inside()
    {
        var wall = Math.PI * 2 * 10;

        SquareInches(new TubeShape { Diameter = In(2), Length = In(10) }).ShouldBe(wall, 1e-9);
        SquareInches(new TubeShape { Diameter = In(2), Length = In(10), Ends = 1 }).ShouldBe(wall + Math.PI, 1e-9);
        SquareInches(new TubeShape { Diameter = In(2), Length = In(10), Ends = 2, Inside = true }).ShouldBe((2 * wall) + (2 * Math.PI), 1e-9);
    }

    [Fact]
    public void A_cone_with_sides_three_and_four_has_a_slant_of_five() =>
        SquareInches(new ConeShape { Base = In(6), Height = In(4) }).ShouldBe(Math.PI * 3 * 5, 1e-9);

    [Fact]
    public void A_cone_cut_off_at_its_own_width_is_a_cylinder() =>
        SquareInches(new ConeShape { Base = In(6), Top = In(6), Height = In(4) }).ShouldBe(Math.PI * 6 * 4, 1e-9);

    [Fact]
    public void A_dome_as_high_as_its_radius_is_half_a_sphere() =>
        SquareInches(new DomeShape { Diameter = In(6), Height = In(3) }).ShouldBe(Math.PI * 6 * 6 / 2, 1e-9);

    [Fact]
    public void Four_quarter_bends_make_a_torus()
    {
        var quarter = new BendShape { Diameter = In(1), Radius = In(0.5) };

        (4 * SquareInches(quarter)).ShouldBe(Math.PI * Math.PI, 1e-9);
        SquareInches(new BendShape { Diameter = In(1), Radius = In(0.5), Angle = Angle.FromDegrees(360) }).ShouldBe(Math.PI * Math.PI, 1e-9);
    }

    [Fact]
    public void A_channel_and_an_angle_count_both_faces()
    {
        SquareInches(new ChannelShape { Web = In(5), Flange = In(2), Length = In(20) }).ShouldBe(2 * (5 + 2 + 2) * 20, 1e-9);
        SquareInches(new AngleShape { LegA = In(3), LegB = In(2), Length = In(20) }).ShouldBe(2 * (3 + 2) * 20, 1e-9);
    }

    [Fact]
    public void What_is_cut_out_goes_once_whatever_the_count_and_sides()
    {
        var hole = new DiscShape { Diameter = In(2) };
        var shape = new PanelShape { Length = In(12), Width = In(8), Sides = 2, Count = 3, Less = [hole] };

        SquareInches(shape).ShouldBe((3 * 2 * 96) - Math.PI, 1e-9);
    }

    [Fact]
    public void A_cut_of_several_counts_each_of_them()
    {
        var holes = new DiscShape { Diameter = In(2), Sides = 2, Count = 4 };

        SquareInches(new PanelShape { Length = In(12), Width = In(8), Less = [holes] }).ShouldBe(96 - (8 * Math.PI), 1e-9);
    }
}
