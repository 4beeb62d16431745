using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>How readily air and a surface exchange heat, for the lag of metal behind air.</summary>
/// <param name="Indoors">A vertical face in still room air.</param>
/// <param name="Outdoors">A face in the open.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record FilmCoefficients(HeatTransferCoefficient Indoors, HeatTransferCoefficient Outdoors, Provenance Provenance);
