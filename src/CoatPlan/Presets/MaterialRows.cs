using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>Reads materials and the heat exchange of surfaces with air.</summary>
internal static class MaterialRows
{
    private static readonly (string, MaterialFamily)[] Families =
    [
        ("ferrous", MaterialFamily.Ferrous), ("light metal", MaterialFamily.LightMetal), ("stainless", MaterialFamily.Stainless),
        ("plated", MaterialFamily.Plated), ("copper alloy", MaterialFamily.CopperAlloy), ("plastic", MaterialFamily.Plastic),
        ("rubber", MaterialFamily.Rubber),
    ];

    public static Material Material(PresetRow row) => new()
    {
        Word = row.Word,
        Family = row.Choice("family", Families),
        Cast = row.Flag("cast"),
        Density = row.Measured("density", QuantityText.Density, value => value.KilogramsPerCubicMeter, PresetBounds.Density),
        SpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(row.InUnit("heat", "J/kgK", PresetBounds.SpecificHeat)),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(row.InUnit("conductivity", "W/mK", PresetBounds.Conductivity)),
        Gauge = row.Measured("gauge", QuantityText.Length, value => value.Meters, PresetBounds.Length),
        Relief = row.Number("relief", PresetBounds.Factor),
        Lightness = row.Number("lightness", PresetBounds.Lightness),
        Ranges = row.Texts("range"),
        Provenance = row.Provenance(),
    };

    public static (string Word, HeatTransferCoefficient Coefficient, Provenance Provenance) Film(PresetRow row)
    {
        row.TextOr("means", "");
        double coefficient = row.InUnit("coefficient", "W/m2K", PresetBounds.FilmCoefficient);
        return (row.Word, HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(coefficient), row.Provenance());
    }
}
