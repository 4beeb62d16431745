using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>A solvent or propellant: what turns into vapour, and which limits hold for it.</summary>
public sealed record Solvent
{
    /// <summary>The name that plans print, such as <c>n-butyl acetate</c>.</summary>
    public required string Name { get; init; }

    /// <summary>CAS registry number.</summary>
    public required string Cas { get; init; }

    /// <summary>Other names a data sheet may use.</summary>
    public required ImmutableArray<string> Aliases { get; init; }

    /// <summary>Molar mass; of a mixture, a mean.</summary>
    public required MolarMass MolarMass { get; init; }

    /// <summary>Density of the liquid at 20 °C.</summary>
    public required Density Density { get; init; }

    /// <summary>Boiling point at 1 atm; of a mixture, its beginning.</summary>
    public required Temperature Boiling { get; init; }

    /// <summary>Whether it is a gas under pressure that leaves at once.</summary>
    public required bool Propellant { get; init; }

    /// <summary>Whether it counts as a volatile organic compound: all but water and what the rules exempt.</summary>
    public required bool Voc { get; init; }

    /// <summary>Whether it burns at all; water does not.</summary>
    public bool Burns => LowerExplosiveLimit is not null;

    /// <summary>Lowest published lower explosive limit, by volume of air; null: does not burn.</summary>
    public required ExposureLimit? LowerExplosiveLimit { get; init; }

    /// <summary>The list which that limit is from; empty where there is none.</summary>
    public required string LowerExplosiveLimitSource { get; init; }

    /// <summary>Legal limit over 8 h; null: none.</summary>
    public required ExposureLimit? Legal { get; init; }

    /// <summary>Recommended limit over 8 to 10 h; null: none.</summary>
    public required ExposureLimit? Recommended { get; init; }

    /// <summary>Limit over 15 min; null: none.</summary>
    public required ExposureLimit? ShortTerm { get; init; }

    /// <summary>Limit at any time; null: none.</summary>
    public required ExposureLimit? Ceiling { get; init; }

    /// <summary>Immediately dangerous to life or health; null: none.</summary>
    public required ExposureLimit? Idlh { get; init; }

    /// <summary>How much ozone its vapour may form outdoors; null where nobody says.</summary>
    public required ReactivityFactor? Ozone { get; init; }

    /// <summary>What differs between lists, or empty.</summary>
    public required string Note { get; init; }

    /// <summary>Where the row comes from; its status is that of molar mass and density.</summary>
    public required Provenance Provenance { get; init; }

    /// <summary>The lower of the legal and the recommended limit; null where neither is known.</summary>
    public ExposureLimit? LowestLongTerm => (Legal, Recommended) switch
    {
        (null, var recommended) => recommended,
        (var legal, null) => legal,
        var (legal, recommended) => legal.Share <= recommended.Share ? legal : recommended,
    };
}
