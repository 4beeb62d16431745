using CoatPlan.Jobs;
using UnitsNet;

namespace CoatPlan.Climate;

/// <summary>When a washed part is dry: overnight where it is left to drain, within hours where it is blown off.</summary>
/// <remarks>
/// Water leaves as fast as the gap between its saturation pressure at the metal and its pressure in the air is wide; in saturated air it does
/// not leave at all. Source: Dalton's law of evaporation, textbook.
/// </remarks>
public static class WashDrying
{
    /// <summary>When a part that is left to drain is dry.</summary>
    /// <param name="metal">The piece.</param>
    /// <param name="from">End of the wash, minutes from the job's start.</param>
    /// <param name="figures">The trade's figures.</param>
    /// <returns>Minutes from the job's start, rounded up, not sooner than the figure; null: not within 400 days of the start.</returns>
    public static int? Drained(SurfaceCurve metal, int from, ClimateFigures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return Reaches(metal, from, figures.DrainedDrying, figures.DrainedAir, figures.DrainedHumidity);
    }

    /// <summary>When a part that was blown off with compressed air is dry.</summary>
    /// <param name="metal">The piece.</param>
    /// <param name="from">End of the blowing, minutes from the job's start.</param>
    /// <param name="figures">The trade's figures.</param>
    /// <returns>Minutes from the job's start, rounded up, not sooner than the figure; null: not within 400 days of the start.</returns>
    public static int? BlownOff(SurfaceCurve metal, int from, ClimateFigures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return Dries(metal, from, figures.BlownDrying);
    }

    /// <summary>When water is gone that takes so long at the air and humidity at which labels hold, 70 °F and 50 %.</summary>
    /// <param name="metal">The piece.</param>
    /// <param name="from">When it began to dry, minutes from the job's start.</param>
    /// <param name="time">How long it takes there, zero or more.</param>
    /// <returns>Minutes from the job's start, rounded up, not sooner than the time; null: not within 400 days of the start.</returns>
    public static int? Dries(SurfaceCurve metal, int from, Duration time) =>
        Reaches(metal, from, time, JobDefaults.LabelAir, JobDefaults.LabelHumidity);

    private static int? Reaches(SurfaceCurve metal, int from, Duration time, Temperature atAir, Ratio atHumidity)
    {
        ArgumentNullException.ThrowIfNull(metal);
        var law = new RateLaw
        {
            Kind = RateKind.Evaporation,
            Bound = RateBound.Floor,
            AtCelsius = atAir.DegreesCelsius,
            AtRelative = atHumidity.DecimalFractions,
            Q10 = 1,
        };
        return metal.Drying(law).Reaches(from, time.TotalMinutes);
    }
}
