using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Paint;

/// <summary>Between wet film, dry film, volume solids and the area a volume covers.</summary>
public static class WetFilm
{
    /// <summary>Dry film that a wet film leaves: DFT = WFT × volume solids. Source: MIL-HDBK-1110 §2.1.5.</summary>
    /// <param name="wet">More than zero.</param>
    /// <param name="solids">By volume of what makes up the wet film, over 0 and up to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Solids outside their range.</exception>
    public static Length Dry(Length wet, Ratio solids) => wet * InRange(solids);

    /// <summary>Area that a volume covers with nothing lost: m²/L = 10 × VS% / DFT(µm). Source: MIL-HDBK-1110 §2.1.5.</summary>
    /// <param name="volume">Of what the solids are a share of.</param>
    /// <param name="solids">By volume, over 0 and up to 1.</param>
    /// <param name="dryFilm">More than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Solids outside their range, or a film that is not more than zero.</exception>
    public static Area Covers(Volume volume, Ratio solids, Length dryFilm)
    {
        if (!(dryFilm.Meters > 0))
            throw new ArgumentOutOfRangeException(nameof(dryFilm), dryFilm, "More than zero.");

        return volume * InRange(solids) / dryFilm;
    }

    /// <summary>The same with a share lost: practical = theoretical × (1 − loss).</summary>
    /// <param name="volume">Of what the solids are a share of.</param>
    /// <param name="solids">By volume, over 0 and up to 1.</param>
    /// <param name="dryFilm">More than zero.</param>
    /// <param name="loss">Share that does not land, 0 to under 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share or a film outside its range.</exception>
    public static Area Covers(Volume volume, Ratio solids, Length dryFilm, Ratio loss)
    {
        if (loss.DecimalFractions is not (>= 0 and < 1))
            throw new ArgumentOutOfRangeException(nameof(loss), loss, "From 0 up to but not 1.");

        return Covers(volume, solids, dryFilm) * (1 - loss.DecimalFractions);
    }

    /// <summary>Wet film that one coat puts on the part, its propellant flashed off; null where the label does not allow the sum.</summary>
    /// <remarks>A can's solids are a share of everything in it. Propellant never reaches the part, so the film there is richer: it runs sooner.</remarks>
    /// <param name="label">The product.</param>
    public static Length? OnThePart(Label label)
    {
        ArgumentNullException.ThrowIfNull(label);
        return label is { DryFilm: { } dry, SolidsByVolume: { } solids } ? dry * (1 - PropellantByVolume(label)) / solids.DecimalFractions : null;
    }

    /// <summary>Share of the whole contents that is liquid propellant, by volume; 0 where density or solvents are unknown.</summary>
    /// <param name="label">The product.</param>
    internal static double PropellantByVolume(Label label) => label.Density is not { } density
        ? 0
        : label.Solvents.Where(content => content.Solvent.Propellant)
            .Sum(content => content.Share.DecimalFractions * (density / content.Solvent.Density));

    private static double InRange(Ratio solids) => solids.DecimalFractions is > 0 and <= 1
        ? solids.DecimalFractions
        : throw new ArgumentOutOfRangeException(nameof(solids), solids, "Over 0 and up to 1.");
}
