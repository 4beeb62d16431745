using CoatPlan.Jobs.Yaml;

namespace CoatPlan.Presets;

/// <summary>What one file says of a row.</summary>
/// <param name="Key">The row's key there.</param>
/// <param name="Map">Its fields there.</param>
/// <param name="File">The file.</param>
internal sealed record PresetLayer(TextNode Key, MapNode Map, PresetFile File);
