namespace CoatPlan.Sheets.Drawing;

/// <summary>A drawing before anybody decides on what: every renderer takes the same marks.</summary>
/// <param name="Width">Width, points.</param>
/// <param name="Height">Height, points.</param>
/// <param name="Marks">What is drawn, the lowest first.</param>
internal sealed record Picture(double Width, double Height, ImmutableArray<Mark> Marks);
