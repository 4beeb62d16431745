namespace CoatPlan.Presets;

/// <summary>How much ozone a vapour may form outdoors: its maximum incremental reactivity.</summary>
/// <param name="GramsPerGram">Grams of ozone for a gram of vapour, at least 0.</param>
/// <param name="Status">How well it is known.</param>
public sealed record ReactivityFactor(double GramsPerGram, Status Status);
