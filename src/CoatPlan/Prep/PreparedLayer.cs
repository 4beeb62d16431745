using CoatPlan.Presets;

namespace CoatPlan.Prep;

/// <summary>A layer of a surface's system with its product's label.</summary>
/// <param name="Label">The product.</param>
/// <param name="OnlyBare">Whether just the bare spots are sprayed.</param>
internal sealed record PreparedLayer(Label Label, bool OnlyBare);
