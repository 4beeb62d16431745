using CoatPlan.Presets;

namespace CoatPlan.Paint;

/// <summary>How many coats hide what is below.</summary>
public static class HidingCoats
{
    /// <summary>More coats than anyone puts on: a film that takes more does not hide.</summary>
    public const int NeverHides = 20;

    /// <summary>L* of a coating whose colour is unknown: the middle, where hiding is neither at its easiest nor at its hardest.</summary>
    private const double UnknownLightness = 50;
    private const double LeastReflectance = 0.003;
    private const double MostReflectance = 0.97;

    /// <summary>
    /// Fewest coats of a product that hide what is below: its contrast ratio reaches <c>hide-contrast</c>, or what shows differs from the full colour by
    /// less than <c>hide-lightness</c> in L*.
    /// </summary>
    /// <param name="below">L* of what is below, 0 to 100; null: unknown, so the contrast ratio alone decides.</param>
    /// <param name="label">The product.</param>
    /// <param name="figures">When a film hides.</param>
    /// <returns>1 to <see cref="NeverHides"/>; null for a product that need not hide.</returns>
    public static int? Over(double? below, Label label, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(figures);
        return label.MustHide
            ? Over(below, label.Lightness ?? UnknownLightness, ContrastOf(label, figures.Number("hide-contrast")), figures.Number("hide-contrast"), figures.Number("hide-lightness"))
            : null;
    }

    /// <summary>Contrast ratio of one coat: the label's, or what the coats that hid a test panel come to.</summary>
    /// <param name="label">The product.</param>
    /// <param name="hiddenContrast">Contrast ratio that hides, over 0 and under 1.</param>
    internal static double ContrastOf(Label label, double hiddenContrast)
    {
        if (label.HidesAfter is not { } coats)
            return label.Hiding;
        if (coats == 1)
            return hiddenContrast;

        var film = Film(label.Lightness ?? UnknownLightness);
        return film.Contrast(film.PowerFor(hiddenContrast) / coats);
    }

    /// <summary>L* that so many coats of a product leave; null where its colour is unknown.</summary>
    /// <param name="below">L* of what is below, 0 to 100; null: unknown, so the product's own colour is taken.</param>
    /// <param name="label">The product.</param>
    /// <param name="coats">Full coats, 1 or more.</param>
    internal static double? Leaves(double? below, Label label, int coats)
    {
        if (label.Lightness is not { } lightness || below is not { } old || label.Hiding >= 1)
            return label.Lightness;

        var film = Film(lightness);
        return CieLightness.Of(film.Over(CieLightness.Reflectance(old), coats * film.PowerFor(label.Hiding)));
    }

    /// <summary>Fewest coats of a colour that hide what is below.</summary>
    /// <param name="below">L* of what is below, 0 to 100; null: unknown.</param>
    /// <param name="lightness">L* of the colour, 0 to 100.</param>
    /// <param name="contrast">Contrast ratio of one coat, over 0 and up to 1.</param>
    /// <param name="hiddenContrast">Contrast ratio that hides, over 0 and under 1.</param>
    /// <param name="hiddenDifference">Difference of L* that does not show, more than 0.</param>
    internal static int Over(double? below, double lightness, double contrast, double hiddenContrast, double hiddenDifference)
    {
        if (contrast is not (> 0 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(contrast), contrast, "Over 0 and up to 1.");
        if (contrast >= hiddenContrast)
            return 1;

        var film = Film(lightness);
        var power = film.PowerFor(contrast);
        for (var coats = 1; coats < NeverHides; coats++)
        {
            if (film.Contrast(coats * power) >= hiddenContrast)
                return coats;
            if (below is { } old && Difference(film, old, coats * power) < hiddenDifference)
                return coats;
        }

        return NeverHides;
    }

    private static OpaqueFilm Film(double lightness) => new(Math.Clamp(CieLightness.Reflectance(lightness), LeastReflectance, MostReflectance));

    private static double Difference(OpaqueFilm film, double below, double power) =>
        Math.Abs(CieLightness.Of(film.Over(CieLightness.Reflectance(below), power)) - CieLightness.Of(film.Infinite));
}
