using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>The text after an edit, or why it could not be edited.</summary>
/// <param name="Text">The new text; null: there are problems and the text stays as it is.</param>
/// <param name="Problems">Why not; empty: it was edited.</param>
public sealed record JobEditing(string? Text, ImmutableArray<Problem> Problems);
