namespace CoatPlan.Presets;

/// <summary>A hazard a label may name.</summary>
/// <param name="Word">The contract's word, such as <c>isocyanate</c>.</param>
/// <param name="Means">What it does and what it asks, in one sentence.</param>
/// <param name="Respirator">Least kind of respirator by word; empty: as for any spraying.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record Hazard(string Word, string Means, string Respirator, Provenance Provenance);
