using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>One grit of an abrasive scale.</summary>
/// <param name="Scale">P (FEPA, ISO 6344) or CAMI; the same number is not the same size.</param>
/// <param name="Grit">The number on the sheet.</param>
/// <param name="Size">Average grain.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record Abrasive(string Scale, int Grit, Length Size, Provenance Provenance);
