using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>How much of a product's whole contents is one solvent or propellant.</summary>
/// <param name="Solvent">The substance.</param>
/// <param name="Share">By mass of the whole contents, propellant included.</param>
public sealed record SolventContent(Solvent Solvent, Ratio Share);
