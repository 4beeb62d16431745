namespace CoatPlan.Sheets.Content;

/// <summary>A tag to cut out and tie to a part.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Name">The part.</param>
/// <param name="Lines">What is known of it, a line each.</param>
/// <param name="Blanks">What the person writes on it.</param>
public sealed record Tag(string Number, string Name, ImmutableArray<string> Lines, ImmutableArray<string> Blanks);
