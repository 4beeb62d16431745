using CoatPlan.Presets;

namespace CoatPlan.Climate;

/// <summary>When a film has come how far, in the air and on the metal that the job has.</summary>
public static class Drying
{
    /// <summary>The minute at which a coat has reached a stage.</summary>
    /// <remarks>
    /// Never sooner than the label's time, never sooner for a later end of the coat, never sooner in a colder place. Where the label has its
    /// own table, its rows say how much longer it takes; outside the table's temperatures its edge rows hold.
    /// </remarks>
    /// <param name="label">What was sprayed.</param>
    /// <param name="stage">The stage.</param>
    /// <param name="metal">The piece.</param>
    /// <param name="from">The coat's end, minutes from the job's start; in the pace of the start where it lies before.</param>
    /// <param name="filmFactor">How much longer its film takes than the label's, 1 or more: <see cref="ThickFilmFactor"/>.</param>
    /// <returns>Minutes from the job's start, rounded up; null when it is not reached within 400 days of the start.</returns>
    public static int? Reaches(Label label, DryingStage stage, SurfaceCurve metal, int from, double filmFactor = 1)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(metal);
        var (law, need) = LabelLaws.Stage(label, stage);
        return metal.Drying(law).Reaches(from, need * filmFactor);
    }

    /// <summary>How much longer a thick film takes than the label's, 1 or more; a thinner film still takes the label's time.</summary>
    /// <remarks>Half as thick again at a power of 1.5 takes 1.5^1.5 = 1.84 times as long. The power is a figure of the trade, between evaporation at the film's face and diffusion through it.</remarks>
    /// <param name="filmShare">A film over the label's film of one coat, more than 0.</param>
    /// <param name="figures">The climate's figures.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0.</exception>
    public static double ThickFilmFactor(double filmShare, ClimateFigures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return filmShare > 0
            ? Math.Pow(Math.Max(1, filmShare), figures.ThickFilmPower)
            : throw new ArgumentOutOfRangeException(nameof(filmShare), filmShare, "A film's share of the label's film must be more than 0.");
    }

    /// <summary>The minute at which a wait that is counted at the label's conditions is over, such as the hour before tape comes off.</summary>
    /// <param name="label">What was sprayed, for its pace in cold and damp.</param>
    /// <param name="wait">The wait at the label's conditions, 0 or more.</param>
    /// <param name="metal">The piece.</param>
    /// <param name="from">The coat's end, minutes from the job's start.</param>
    /// <param name="filmFactor">How much longer its film takes than the label's, 1 or more: <see cref="ThickFilmFactor"/>.</param>
    /// <returns>Minutes from the job's start, rounded up; null when it is not over within 400 days of the start.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The wait is less than nothing.</exception>
    public static int? Outwaits(Label label, Duration wait, SurfaceCurve metal, int from, double filmFactor = 1)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(metal);
        if (wait < Duration.Zero)
        {
            throw new ArgumentOutOfRangeException(nameof(wait), wait, "A wait must be 0 or more.");
        }

        var (law, need) = LabelLaws.Wait(label, wait);
        return metal.Drying(law).Reaches(from, need * filmFactor);
    }
}
