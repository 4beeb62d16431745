namespace CoatPlan.Vapour;

/// <summary>A coat as it feeds a single measure of a room: a concentration, or a sum of concentrations each over its limit.</summary>
/// <param name="First">First minute of spraying.</param>
/// <param name="Minutes">Minutes of spraying, 1 or more.</param>
/// <param name="FilmRate">One over the film's time constant, 1/min, more than zero.</param>
/// <param name="AtOnce">What is given off while spraying would add, were it in the air at once.</param>
/// <param name="FromFilm">What the wet film gives off would add, were it in the air at once.</param>
internal readonly record struct MeasuredSource(int First, int Minutes, double FilmRate, double AtOnce, double FromFilm)
{
    /// <summary>The first minute in which it is not sprayed any more.</summary>
    public int End => First + Minutes;
}
