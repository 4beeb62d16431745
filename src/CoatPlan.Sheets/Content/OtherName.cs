namespace CoatPlan.Sheets.Content;

/// <summary>What may stand for a name where its letters cannot be set.</summary>
/// <param name="Name">The name.</param>
/// <param name="Instead">What may stand for it, the best first.</param>
public sealed record OtherName(string Name, ImmutableArray<string> Instead);
