using CoatPlan.Jobs;
using UnitsNet;

namespace CoatPlan.Areas;

/// <summary>The painted area of a shape of the job file.</summary>
public static class ShapeArea
{
    /// <summary>Area of a shape: its own times its count, less what is cut out of it once.</summary>
    /// <param name="shape">A shape with lengths more than zero.</param>
    /// <returns>Not more than zero where more is cut out than there is: the caller's text says so.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A kind of shape that has no formula here.</exception>
    public static Area Of(Shape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        return shape.Less.Aggregate(shape.Count * Whole(shape), (rest, cut) => rest - Of(cut));
    }

    /// <summary>Area of several shapes together.</summary>
    /// <param name="shapes">Shapes with lengths more than zero.</param>
    public static Area Of(ImmutableArray<Shape> shapes) =>
        shapes.Aggregate(Area.Zero, (sum, shape) => sum + Of(shape));

    private static Area Whole(Shape shape) => Area.FromSquareMeters(shape switch
    {
        PanelShape panel => Outline.Panel(panel.Length.Meters, panel.Width.Meters, panel.Sides),
        DiscShape disc => Outline.Disc(disc.Diameter.Meters, disc.Sides),
        RingShape ring => Outline.Ring(ring.Outer.Meters, ring.Inner.Meters, ring.Sides),
        BoxShape box => Outline.Box(box.Length.Meters, box.Width.Meters, box.Height.Meters, box.Faces),
        TubeShape tube => Outline.Tube(tube.Diameter.Meters, tube.Length.Meters, tube.Ends, WallFaces(tube)),
        ConeShape cone => Outline.Cone(cone.Base.Meters, cone.Top.Meters, cone.Height.Meters),
        DomeShape dome => Outline.Dome(dome.Diameter.Meters, dome.Height.Meters),
        BendShape bend => Outline.Bend(bend.Diameter.Meters, bend.Radius.Meters, bend.Angle.Radians),
        ChannelShape channel => Outline.Channel(channel.Web.Meters, channel.Flange.Meters, channel.Length.Meters),
        AngleShape angle => Outline.Angle(angle.LegA.Meters, angle.LegB.Meters, angle.Length.Meters),
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape.GetType().Name, "A shape of the job file."),
    });

    private static int WallFaces(TubeShape tube) => tube.Inside ? 2 : 1;
}
