using CoatPlan.Presets;

namespace CoatPlan.Climate;

/// <summary>When a film has come how far, in the air and on the metal that the job has.</summary>
public static class Drying
{
    /// <summary>The minute at which a coat has reached a stage.</summary>
    /// <remarks>
    /// Never sooner than the label's time, never sooner for a later end of the coat, never sooner in a colder place. Where the label has its
    /// own table, that is what it says; outside the table's temperatures its edge rows hold.
    /// </remarks>
    /// <param name="label">What was sprayed.</param>
    /// <param name="stage">The stage.</param>
    /// <param name="metal">The piece.</param>
    /// <param name="from">The coat's end, minutes from the job's start; in the pace of the start where it lies before.</param>
    /// <returns>Minutes from the job's start, rounded up; null when it is not reached within 400 days of the start.</returns>
    public static int? Reaches(Label label, DryingStage stage, SurfaceCurve metal, int from)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(metal);
        var (law, need) = LabelLaws.Stage(label, stage);
        return metal.Drying(law).Reaches(from, need);
    }

    /// <summary>The minute at which a coat thicker than the label's has reached a stage.</summary>
    /// <param name="label">What was sprayed.</param>
    /// <param name="stage">The stage.</param>
    /// <param name="metal">The piece.</param>
    /// <param name="from">The coat's end, minutes from the job's start.</param>
    /// <param name="filmShare">Its film over the label's film of one coat, more than 0; a thinner film still takes the label's time.</param>
    /// <param name="figures">The climate's figures, for how much slower a thick film is.</param>
    /// <returns>Minutes from the job's start, rounded up; null when it is not reached within 400 days of the start.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0.</exception>
    public static int? Reaches(Label label, DryingStage stage, SurfaceCurve metal, int from, double filmShare, ClimateFigures figures)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(metal);
        ArgumentNullException.ThrowIfNull(figures);
        if (!(filmShare > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(filmShare), filmShare, "A film's share of the label's film must be more than 0.");
        }

        var (law, need) = LabelLaws.Stage(label, stage);
        return metal.Drying(law).Reaches(from, need * Math.Pow(Math.Max(1, filmShare), figures.ThickFilmPower));
    }

    /// <summary>The minute at which a wait that is counted at the label's conditions is over, such as the hour before tape comes off.</summary>
    /// <param name="label">What was sprayed, for its pace in cold and damp.</param>
    /// <param name="wait">The wait at the label's conditions, 0 or more.</param>
    /// <param name="metal">The piece.</param>
    /// <param name="from">The coat's end, minutes from the job's start.</param>
    /// <returns>Minutes from the job's start, rounded up; null when it is not over within 400 days of the start.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The wait is less than nothing.</exception>
    public static int? Outwaits(Label label, Duration wait, SurfaceCurve metal, int from)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(metal);
        if (wait < Duration.Zero)
        {
            throw new ArgumentOutOfRangeException(nameof(wait), wait, "A wait must be 0 or more.");
        }

        var (law, need) = LabelLaws.Wait(label, wait);
        return metal.Drying(law).Reaches(from, need);
    }
}
