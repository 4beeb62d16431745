using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>Reads materials and the heat exchange of surfaces with air.</summary>
internal static class MaterialRows
{
    // In the order of MaterialFamily.
    private static readonly string[] Families = ["ferrous", "light metal", "stainless", "plated", "copper alloy", "plastic", "rubber"];

    public static Material Material(PresetRow row) => new()
    {
        Word = row.Word,
        Family = (MaterialFamily)row.Choice("family", Families),
        Cast = row.Flag("cast"),
        Density = row.Density("density"),
        SpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(row.InUnit("heat", "J/kgK", PresetBounds.SpecificHeat)),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(row.InUnit("conductivity", "W/mK", PresetBounds.Conductivity)),
        Gauge = row.Length("gauge"),
        Relief = row.Number("relief", PresetBounds.Factor),
        Lightness = row.Number("lightness", PresetBounds.Lightness),
        Ranges = row.Texts("range"),
        Provenance = row.Provenance(),
    };

    public static FilmRow Film(PresetRow row)
    {
        row.TextOr("means", "");
        double coefficient = row.InUnit("coefficient", "W/m2K", PresetBounds.FilmCoefficient);
        return new(row.Word, HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(coefficient), row.Provenance());
    }
}
