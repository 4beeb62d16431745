using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Prep;

/// <summary>Cylinder pressures, judged.</summary>
/// <param name="Mean">Mean of the readings.</param>
/// <param name="Highest">Highest reading.</param>
/// <param name="Lowest">Lowest reading.</param>
/// <param name="LowestCylinder">Number of the cylinder with the lowest reading, from 1.</param>
/// <param name="Verdict">What they say.</param>
public sealed record CylinderCheck(Pressure Mean, Pressure Highest, Pressure Lowest, int LowestCylinder, CylinderVerdict Verdict)
{
    /// <summary>The lowest as a share of the highest, 0 to 1.</summary>
    public double LowestShare => Lowest.Pascals / Highest.Pascals;

    /// <summary>Judges readings: even and over 110 psi is good, from 130 psi up excellent, one under 75 % of the highest fails.</summary>
    /// <param name="readings">At least one, more than zero.</param>
    /// <param name="figures">The three marks. Source: figures cylinder-good, cylinder-excellent and cylinder-least-share, common practice.</param>
    /// <exception cref="ArgumentException">No reading.</exception>
    public static CylinderCheck Judge(ImmutableArray<Pressure> readings, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        if (readings.IsDefaultOrEmpty)
            throw new ArgumentException("At least one reading is needed.", nameof(readings));

        var highest = readings.Max();
        var lowest = readings.Min();
        var mean = Pressure.FromPascals(readings.Average(reading => reading.Pascals));
        var verdict = lowest.Pascals < highest.Pascals * figures.Share("cylinder-least-share").DecimalFractions ? CylinderVerdict.Uneven
            : lowest <= figures.Pressure("cylinder-good") ? CylinderVerdict.Low
            : lowest >= figures.Pressure("cylinder-excellent") ? CylinderVerdict.Excellent
            : CylinderVerdict.Good;
        return new CylinderCheck(mean, highest, lowest, readings.IndexOf(lowest) + 1, verdict);
    }
}
