namespace CoatPlan.Paint;

/// <summary>A scattering film over a ground, by the two-constant theory of Kubelka and Munk.</summary>
/// <remarks>
/// A film is known by the reflectance R∞ that enough of it would have and by its scattering power S·X, which grows with its thickness:
/// R = (1 − Rg·(a − b·coth(b·S·X))) / (a − Rg + b·coth(b·S·X)), a = (1/R∞ + R∞)/2, b = (1/R∞ − R∞)/2. Reflection at the surface itself is
/// left out. Contrast is taken over an ideal black and a white of 80 %. Source: ASTM D2805, ISO 6504-3 (from memory).
/// </remarks>
/// <param name="Infinite">R∞, over 0 and under 1.</param>
internal readonly record struct OpaqueFilm(double Infinite)
{
    private const double Black = 0;
    private const double White = 0.80;
    private const int Halvings = 100;

    /// <summary>Reflectance of so much film over a ground.</summary>
    /// <param name="ground">Reflectance of the ground, 0 to 1.</param>
    /// <param name="power">S·X, more than zero.</param>
    public double Over(double ground, double power)
    {
        var (a, c) = Terms(power);
        return Over(ground, a, c);
    }

    /// <summary>Reflectance over black as a share of that over white: 1 hides wholly.</summary>
    /// <param name="power">S·X, more than zero.</param>
    public double Contrast(double power)
    {
        var (a, c) = Terms(power);
        return Over(Black, a, c) / Over(White, a, c);
    }

    /// <summary>Scattering power of a film whose contrast ratio is known.</summary>
    /// <param name="contrast">Over 0 and under 1.</param>
    public double PowerFor(double contrast)
    {
        // The ratio grows with the power from 0 to 1, so the answer is closed in by halving, on a scale of ratios since powers span decades.
        double low = 1e-6, high = 1e4;
        for (var i = 0; i < Halvings; i++)
        {
            var middle = Math.Sqrt(low * high);
            var hidesLess = Contrast(middle) < contrast;
            if (middle == (hidesLess ? low : high))
                break; // No number lies between the two.
            (low, high) = hidesLess ? (middle, high) : (low, middle);
        }

        return high;
    }

    /// <summary>a and b·coth(b·S·X).</summary>
    private (double A, double C) Terms(double power)
    {
        var a = ((1 / Infinite) + Infinite) / 2;
        var b = ((1 / Infinite) - Infinite) / 2;
        return (a, b / Math.Tanh(b * power));
    }

    private static double Over(double ground, double a, double c) => (1 - (ground * (a - c))) / (a - ground + c);
}
