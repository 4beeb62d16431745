using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Vapour;

/// <summary>Between the mass of a vapour and its share of the air.</summary>
public static class Concentration
{
    /// <summary>Litres that a mole of any gas takes at 25 °C and 1 atm, the state that exposure limits are stated at.</summary>
    /// <remarks>Agrees with the limit pairs in ppm and mg/m³ of the NIOSH IDLH documentation.</remarks>
    public const double MolarVolumeLitres = 24.45;

    /// <summary>Share of a room's air, by volume, that a mass of vapour makes when it is spread evenly.</summary>
    /// <param name="mass">At least 0.</param>
    /// <param name="solvent">What it is.</param>
    /// <param name="room">More than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A room that is not more than zero.</exception>
    public static Ratio In(Mass mass, Solvent solvent, Volume room)
    {
        ArgumentNullException.ThrowIfNull(solvent);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(room.CubicMeters);
        return Ratio.FromDecimalFractions(VapourOf(mass, solvent.MolarMass) / room);
    }

    /// <summary>Volume of the vapour of a mass at 25 °C and 1 atm.</summary>
    /// <param name="mass">At least 0.</param>
    /// <param name="molarMass">More than zero.</param>
    public static Volume VapourOf(Mass mass, MolarMass molarMass) =>
        Volume.FromLiters(mass.Grams / molarMass.GramsPerMole * MolarVolumeLitres);

    /// <summary>Mass per volume of a share of the air at 25 °C and 1 atm: mg/m³ = ppm × M / 24.45.</summary>
    /// <param name="share">By volume, at least 0.</param>
    /// <param name="molarMass">More than zero.</param>
    public static MassConcentration MassOf(Ratio share, MolarMass molarMass) =>
        MassConcentration.FromMilligramsPerCubicMeter(share.PartsPerMillion * molarMass.GramsPerMole / MolarVolumeLitres);
}
