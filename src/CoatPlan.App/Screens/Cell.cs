namespace CoatPlan.App.Screens;

/// <summary>A field on the screen.</summary>
/// <param name="X">Its first column.</param>
/// <param name="Y">Its row.</param>
/// <param name="Width">Its columns.</param>
internal sealed record Cell(int X, int Y, int Width);
