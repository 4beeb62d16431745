namespace CoatPlan.Presets;

/// <summary>Why a pairing holds or does not.</summary>
/// <param name="Key">A letter for materials, a number for coats.</param>
/// <param name="Text">In short words.</param>
/// <param name="Provenance">Where the rule comes from.</param>
public sealed record CompatibilityReason(string Key, string Text, Provenance Provenance);
