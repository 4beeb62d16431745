using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>A row of the heat exchange between air and surfaces.</summary>
/// <param name="Word">Where the surface is.</param>
/// <param name="Coefficient">Convection and radiation together.</param>
/// <param name="Provenance">Where the row comes from.</param>
internal sealed record FilmRow(string Word, HeatTransferCoefficient Coefficient, Provenance Provenance);
