namespace CoatPlan.Sheets.Drawing;

/// <summary>A line of text.</summary>
/// <param name="X">Its left edge.</param>
/// <param name="Y">Its base line.</param>
/// <param name="Text">The text.</param>
/// <param name="Type">Its type.</param>
/// <param name="Ink">Its ink.</param>
internal sealed record Lettering(double X, double Y, string Text, TypeFace Type, double Ink = 0) : Mark;
