namespace CoatPlan.Explanations;

/// <summary>The explanation that was asked for, or what could have been asked.</summary>
/// <param name="Explanation">The explanation; null where no figure is called so.</param>
/// <param name="Suggestions">Names that come near; empty where it was found.</param>
public sealed record ExplanationReading(Explanation? Explanation, ImmutableArray<string> Suggestions);
