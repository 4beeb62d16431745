namespace CoatPlan.Sheets.Drawing;

/// <summary>A filled shape.</summary>
/// <param name="Corners">Its corners, in order, at least three.</param>
/// <param name="Ink">Its ink.</param>
internal sealed record Area(ImmutableArray<(double X, double Y)> Corners, double Ink) : Mark
{
    /// <summary>A filled rectangle.</summary>
    public static Area Box(double x, double y, double width, double height, double ink) =>
        new([(x, y), (x + width, y), (x + width, y + height), (x, y + height)], ink);
}
