namespace CoatPlan.Presets;

/// <summary>A preset file: its name as problems tell it, and its text.</summary>
/// <param name="Name">Such as <c>presets/products.yaml</c>.</param>
/// <param name="Text">The text, without a byte order mark.</param>
public sealed record PresetText(string Name, string Text);
