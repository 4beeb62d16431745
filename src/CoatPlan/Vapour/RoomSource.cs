namespace CoatPlan.Vapour;

/// <summary>A coat as the room sees it: when it is sprayed, and what all of it would add to each measure if it were in the air at once.</summary>
/// <param name="First">First minute of spraying.</param>
/// <param name="Minutes">Minutes of spraying, 1 or more.</param>
/// <param name="FilmRate">One over the film's time constant, 1/min, more than zero.</param>
/// <param name="AtOnce">Of each measure, what is given off while spraying.</param>
/// <param name="FromFilm">Of each measure, what the wet film gives off.</param>
internal sealed record RoomSource(int First, int Minutes, double FilmRate, ImmutableArray<double> AtOnce, ImmutableArray<double> FromFilm)
{
    /// <summary>Share of the coat that is sprayed in each of its minutes.</summary>
    public double SharePerMinute { get; } = 1.0 / Minutes;

    /// <summary>Share of a wet film's solvent that is still there a minute later.</summary>
    public double FilmKept { get; } = Math.Exp(-FilmRate);

    /// <summary>Whether it is sprayed in a minute.</summary>
    public bool Sprays(int minute) => minute >= First && minute < First + Minutes;
}
