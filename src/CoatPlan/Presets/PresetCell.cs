using CoatPlan.Jobs.Yaml;

namespace CoatPlan.Presets;

/// <summary>A cell of a table of pairs.</summary>
/// <param name="Key">Its column.</param>
/// <param name="Value">What stands there.</param>
internal sealed record PresetCell(string Key, Node Value);
