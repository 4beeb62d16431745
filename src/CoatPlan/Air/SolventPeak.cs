using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Air;

/// <summary>The most of one solvent that the air holds.</summary>
/// <param name="Solvent">The solvent.</param>
/// <param name="Share">Highest one-minute mean, by volume of air.</param>
public sealed record SolventPeak(Solvent Solvent, Ratio Share);
