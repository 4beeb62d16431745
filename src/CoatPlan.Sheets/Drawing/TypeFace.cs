namespace CoatPlan.Sheets.Drawing;

/// <summary>A size and weight of the sheets' typeface.</summary>
/// <param name="Size">Size, points.</param>
/// <param name="Weight">Its weight.</param>
internal sealed record TypeFace(double Size, TypeWeight Weight = TypeWeight.Regular);
