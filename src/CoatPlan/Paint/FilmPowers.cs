namespace CoatPlan.Paint;

/// <summary>Scattering powers of films whose contrast ratio is known, each found once: it takes many steps.</summary>
internal sealed class FilmPowers
{
    private readonly Dictionary<(OpaqueFilm Film, double Contrast), double> known = [];

    /// <summary>See <see cref="OpaqueFilm.PowerFor"/>.</summary>
    public double Of(OpaqueFilm film, double contrast)
    {
        if (!known.TryGetValue((film, contrast), out var power))
            known[(film, contrast)] = power = film.PowerFor(contrast);
        return power;
    }
}
