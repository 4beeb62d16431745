namespace CoatPlan.Areas;

/// <summary>Surfaces of the plain bodies that parts are made of, in m² from metres.</summary>
/// <remarks>
/// Round bodies: Building Trades Pocketbook (c. 1899), mensuration tables; a cap and a bend are plain geometry (a bend is the share of a torus that its
/// angle is of a full turn). Sheet sections count both faces and neglect the thickness of the metal, so that the edges add nothing.
/// </remarks>
internal static class Outline
{
    /// <summary>A flat rectangle, 1 or 2 sides of it.</summary>
    public static double Panel(double length, double width, int sides) => sides * length * width;

    /// <summary>A flat disc, 1 or 2 sides of it.</summary>
    public static double Disc(double diameter, int sides) => sides * Math.PI / 4 * diameter * diameter;

    /// <summary>A flat ring, 1 or 2 sides of it.</summary>
    public static double Ring(double outer, double inner, int sides) => sides * Math.PI / 4 * (outer - inner) * (outer + inner);

    /// <summary>A box of 6 faces; 5 leave out the top, 4 the top and the bottom.</summary>
    public static double Box(double length, double width, double height, int faces)
    {
        var sides = 2 * (length + width) * height;
        var lid = length * width;
        return faces switch
        {
            6 => sides + (2 * lid),
            5 => sides + lid,
            4 => sides,
            _ => throw new ArgumentOutOfRangeException(nameof(faces), faces, "A box has 4, 5 or 6 painted faces."),
        };
    }

    /// <summary>A round tube of thin wall with 0 to 2 closed ends; 1 wall face is the outside, 2 are both.</summary>
    public static double Tube(double diameter, double length, int ends, int wallFaces) =>
        (wallFaces * Math.PI * diameter * length) + Disc(diameter, ends);

    /// <summary>The side of a cone or of its frustum.</summary>
    public static double Cone(double baseDiameter, double topDiameter, double height) =>
        Math.PI / 2 * (baseDiameter + topDiameter) * Slant(baseDiameter, topDiameter, height);

    /// <summary>A spherical cap by the diameter of its rim and its height; a height of half the diameter is a half sphere.</summary>
    public static double Dome(double diameter, double height) => Math.PI * ((diameter * diameter / 4) + (height * height));

    /// <summary>A bent tube by the radius to its middle and its angle in radians.</summary>
    public static double Bend(double diameter, double radius, double angle) => Math.PI * diameter * radius * angle;

    /// <summary>Both faces of a channel section.</summary>
    public static double Channel(double web, double flange, double length) => 2 * (web + (2 * flange)) * length;

    /// <summary>Both faces of an angle section.</summary>
    public static double Angle(double legA, double legB, double length) => 2 * (legA + legB) * length;

    private static double Slant(double baseDiameter, double topDiameter, double height)
    {
        var step = (baseDiameter - topDiameter) / 2;
        return Math.Sqrt((height * height) + (step * step));
    }
}
