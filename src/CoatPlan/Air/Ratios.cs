using CoatPlan.Presets;
using CoatPlan.Vapour;
using UnitsNet;

namespace CoatPlan.Air;

/// <summary>Sums over limits, as the rules put them.</summary>
public static class Ratios
{
    /// <summary>Equivalent exposure of a mixture: Em = Σ C/L. Source: 29 CFR 1910.1000(d)(2)(i).</summary>
    /// <param name="parts">Concentration and limit of each, in one unit; limits more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit that is not more than zero.</exception>
    public static double Mixture(IEnumerable<(double Concentration, double Limit)> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var sum = 0.0;
        foreach (var (concentration, limit) in parts)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(limit, nameof(parts));
            sum += concentration / limit;
        }

        return sum;
    }

    /// <summary>Average over a shift: E = Σ C·T / 8 h. Source: 29 CFR 1910.1000(d)(1)(i).</summary>
    /// <param name="parts">Concentration and how long it lasts.</param>
    public static double TimeWeighted(IEnumerable<(double Concentration, Duration Time)> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return parts.Sum(part => part.Concentration * part.Time.TotalHours) / Shift.TotalHours;
    }

    /// <summary>Highest concentration a respirator may be worn in: factor × limit, never above IDLH. Source: 29 CFR 1910.134(d)(3)(i)(B).</summary>
    /// <param name="factor">Assigned protection factor, 1 or more.</param>
    /// <param name="limit">8-hour limit, by volume of air.</param>
    /// <param name="idlh">Immediately dangerous to life or health; null where none is known.</param>
    public static Ratio MaximumUse(int factor, Ratio limit, Ratio? idlh)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(factor, 1);
        var use = limit * factor;
        return idlh is { } dangerous && dangerous < use ? dangerous : use;
    }

    /// <summary>Air that dilutes the vapour of a volume of liquid to a share of its lower explosive limit, per volume of that liquid.</summary>
    /// <remarks>Source: 29 CFR 1910.94(c)(6)(ii), from memory: 4 × (100 − LEL) × vapour per liquid / LEL, the 4 being one over 25 %.</remarks>
    /// <param name="vapourPerLiquid">Volumes of vapour from one volume of liquid.</param>
    /// <param name="lel">Lower explosive limit, by volume of air.</param>
    /// <param name="shareOfLel">What to stay under, over 0.</param>
    public static double DilutionPerLiquid(double vapourPerLiquid, Ratio lel, Ratio shareOfLel) =>
        (1 - lel.DecimalFractions) * vapourPerLiquid / lel.DecimalFractions / shareOfLel.DecimalFractions;

    /// <summary>The hours that an exposure limit is averaged over.</summary>
    internal static Duration Shift => Duration.FromHours(8);

    /// <summary>What a share of the air counts in Σ C/limit; 0 for a solvent without a limit, which is named elsewhere.</summary>
    internal static double OfLimit(Solvent solvent, double share) => solvent.LowestLongTerm is { } limit ? share / limit.Share.DecimalFractions : 0;

    /// <summary>What a share of the air counts in Σ C/LEL; 0 for what does not burn.</summary>
    internal static double OfLel(Solvent solvent, double share) =>
        solvent.LowerExplosiveLimit is { } limit ? share / limit.Share.DecimalFractions : 0;

    /// <summary>Share of a room's air that all of a solvent would make.</summary>
    internal static double ShareOf(Mass mass, Solvent solvent, WorkRoom room) => Concentration.In(mass, solvent, room.Volume).DecimalFractions;
}
