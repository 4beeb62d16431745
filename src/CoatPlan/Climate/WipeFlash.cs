using CoatPlan.Jobs;

namespace CoatPlan.Climate;

/// <summary>When the solvent of a wipe has left.</summary>
/// <remarks>Ten minutes on warm metal are twenty on metal 10 °C colder.</remarks>
public static class WipeFlash
{
    /// <summary>When a wiped part may be coated.</summary>
    /// <param name="metal">The piece.</param>
    /// <param name="from">End of the wipe, minutes from the job's start.</param>
    /// <param name="figures">The trade's figures.</param>
    /// <returns>Minutes from the job's start, rounded up, not sooner than the figure; null: not within 400 days of the start.</returns>
    public static int? Reaches(SurfaceCurve metal, int from, ClimateFigures figures)
    {
        ArgumentNullException.ThrowIfNull(metal);
        ArgumentNullException.ThrowIfNull(figures);
        var law = new RateLaw
        {
            Kind = RateKind.Warmth,
            Bound = RateBound.Floor,
            AtCelsius = JobDefaults.LabelAir.DegreesCelsius,
            AtRelative = JobDefaults.LabelHumidity.DecimalFractions,
            Q10 = figures.WipeQ10,
        };
        return metal.Drying(law).Reaches(from, figures.WipeFlash.TotalMinutes);
    }
}
