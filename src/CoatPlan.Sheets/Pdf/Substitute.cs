namespace CoatPlan.Sheets.Pdf;

/// <summary>What a document prints where its typefaces lack the letters.</summary>
/// <param name="Words">The words as the person wrote them.</param>
/// <param name="Printed">What stands for them on paper.</param>
public sealed record Substitute(string Words, string Printed);
