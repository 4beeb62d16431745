using CoatPlan.Jobs.Yaml;

namespace CoatPlan.Presets;

/// <summary>An entry of a map inside a row, and the layer that says it.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Value">Its value.</param>
/// <param name="Layer">The row there.</param>
internal sealed record PresetEntry(TextNode Key, Node Value, PresetLayer Layer);
