namespace CoatPlan.Sheets.Drawing;

/// <summary>A line through points.</summary>
/// <param name="Points">The points, at least two.</param>
/// <param name="Width">How thick it is, points.</param>
/// <param name="Dashes">Lengths of dash and gap, points; empty for a whole line.</param>
/// <param name="Ink">Its ink.</param>
internal sealed record Stroke(ImmutableArray<(double X, double Y)> Points, double Width, ImmutableArray<double> Dashes, double Ink) : Mark
{
    /// <summary>A whole black line from point to point.</summary>
    public static Stroke Line(double x, double y, double toX, double toY, double width = 0.5, double ink = 0) => new([(x, y), (toX, toY)], width, [], ink);

    /// <summary>The outline of a rectangle.</summary>
    public static Stroke Box(double x, double y, double width, double height, double line = 0.5) =>
        new([(x, y), (x + width, y), (x + width, y + height), (x, y + height), (x, y)], line, [], 0);
}
