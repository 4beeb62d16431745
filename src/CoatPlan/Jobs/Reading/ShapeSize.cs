namespace CoatPlan.Jobs.Reading;

/// <summary>Whether anything of a shape is left once what is taken away is gone.</summary>
/// <remarks>The areas that a plan counts with are measured further on; a test holds both to the same figures.</remarks>
internal static class ShapeSize
{
    /// <summary>Area of a shape times its count, less what is taken away; zero or less: nothing is left.</summary>
    public static double SquareMetres(Shape shape) => (shape.Count * Own(shape)) - shape.Less.Sum(SquareMetres);

    private static double Own(Shape shape) => shape switch
    {
        PanelShape s => s.Sides * s.Length.Meters * s.Width.Meters,
        DiscShape s => s.Sides * Circle(s.Diameter.Meters),
        RingShape s => s.Sides * (Circle(s.Outer.Meters) - Circle(s.Inner.Meters)),
        BoxShape s => Box(s.Length.Meters, s.Width.Meters, s.Height.Meters, s.Faces),
        TubeShape s => (Math.PI * s.Diameter.Meters * s.Length.Meters * (s.Inside ? 2 : 1)) + (s.Ends * Circle(s.Diameter.Meters)),
        ConeShape s => Math.PI / 2 * (s.Base.Meters + s.Top.Meters) * double.Hypot(s.Height.Meters, (s.Base.Meters - s.Top.Meters) / 2),
        DomeShape s => Math.PI * ((s.Diameter.Meters * s.Diameter.Meters / 4) + (s.Height.Meters * s.Height.Meters)),
        BendShape s => Math.PI * s.Diameter.Meters * s.Radius.Meters * s.Angle.Radians,
        ChannelShape s => 2 * (s.Web.Meters + (2 * s.Flange.Meters)) * s.Length.Meters,
        AngleShape s => 2 * (s.LegA.Meters + s.LegB.Meters) * s.Length.Meters,
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape.GetType().Name, "A shape of the contract."),
    };

    private static double Box(double length, double width, double height, int faces) =>
        (2 * (length + width) * height) + ((faces - 4) * length * width);

    private static double Circle(double diameter) => Math.PI / 4 * diameter * diameter;
}
