using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>What a surface is made of, and how fast it follows the temperature of the air.</summary>
public sealed record Material
{
    /// <summary>The contract's word, such as <c>cast aluminium</c>.</summary>
    public required string Word { get; init; }

    /// <summary>What it is for coating: see <see cref="MaterialFamily"/>.</summary>
    public required MaterialFamily Family { get; init; }

    /// <summary>Mass per volume.</summary>
    public required Density Density { get; init; }

    /// <summary>Specific heat, per mass and kelvin.</summary>
    public required SpecificEntropy SpecificHeat { get; init; }

    /// <summary>Thermal conductivity.</summary>
    public required ThermalConductivity Conductivity { get; init; }

    /// <summary>Thickness where the job gives none.</summary>
    public required Length Gauge { get; init; }

    /// <summary>True over outline area of a panel of it, 1 or more; see <see cref="Catalogue.Relief"/>.</summary>
    public required double Relief { get; init; }

    /// <summary>L* of the bare, cleaned surface, 0 to 100.</summary>
    public required double Lightness { get; init; }

    /// <summary>Whether the facts say it is cast: thick, rough, slow to warm.</summary>
    public required bool Cast { get; init; }

    /// <summary>Field to usual range, as written.</summary>
    public required ImmutableDictionary<string, string> Ranges { get; init; }

    /// <summary>Where the row comes from.</summary>
    public required Provenance Provenance { get; init; }

    /// <summary>Steel or iron without plating: it rusts.</summary>
    public bool IsFerrous => Family == MaterialFamily.Ferrous;

    /// <summary>Any metal, plated or not.</summary>
    public bool IsMetal => Family is not (MaterialFamily.Plastic or MaterialFamily.Rubber);

    /// <summary>Steel under zinc or cadmium.</summary>
    public bool IsPlated => Family == MaterialFamily.Plated;

    /// <summary>Plastic or glass-fibre.</summary>
    public bool IsPlastic => Family == MaterialFamily.Plastic;
}
