namespace CoatPlan.Presets;

/// <summary>Something near a surface that asks for care.</summary>
/// <param name="Word">The contract's word, such as <c>fuel line</c>.</param>
/// <param name="Warning">The warning code it raises; empty where it raises none by itself.</param>
/// <param name="Care">What to do, in one sentence.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record Neighbour(string Word, string Warning, string Care, Provenance Provenance);
