using CoatPlan.Jobs;

namespace CoatPlan.Climate;

/// <summary>When a washed or wiped part is dry: within hours where it was blown off.</summary>
/// <remarks>
/// Water leaves as fast as the gap between its saturation pressure at the metal and its pressure in the air is wide; in saturated air it does
/// not leave at all. Source: Dalton's law of evaporation, textbook.
/// </remarks>
public static class WashDrying
{
    /// <summary>When water is gone that takes so long at the air and humidity at which labels hold, 70 °F and 50 %.</summary>
    /// <param name="metal">The piece.</param>
    /// <param name="from">When it began to dry, minutes from the job's start.</param>
    /// <param name="time">How long it takes there, zero or more.</param>
    /// <returns>Minutes from the job's start, rounded up, not sooner than the time; null: not within 400 days of the start.</returns>
    public static int? Dries(SurfaceCurve metal, int from, Duration time)
    {
        ArgumentNullException.ThrowIfNull(metal);
        var law = new RateLaw
        {
            Kind = RateKind.Evaporation,
            Bound = RateBound.Floor,
            AtCelsius = JobDefaults.LabelAir.DegreesCelsius,
            AtRelative = JobDefaults.LabelHumidity.DecimalFractions,
            Q10 = 1,
        };
        return metal.Drying(law).Reaches(from, time.TotalMinutes);
    }
}
