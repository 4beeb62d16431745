namespace CoatPlan.Vapour;

/// <summary>The mass balance of a well-mixed room over one minute, solved, not stepped: C′ = steady + fading·e^(−k·t) − λ·C.</summary>
/// <remarks>
/// λ is Q/(K·V); k is one over the time constant of a drying film. The textbook balance of a room with a source (C∞ = K·G/Q) is the case without a
/// fading part. Factors belong to one λ; those of a film to one k beside it. With rates and sources counted per stretch they hold for a stretch of any length.
/// </remarks>
internal readonly struct ExactMinute
{
    /// <summary>Under it, quotients of small differences are summed as series instead.</summary>
    private const double Small = 0.05;

    /// <summary>Rates that are nearer than this are taken as one in their middle: the error is of the square of the distance.</summary>
    private const double Alike = 1e-4;

    private readonly double rate;

    public ExactMinute(double ratePerMinute)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(ratePerMinute);
        rate = ratePerMinute;
        Kept = Math.Exp(-rate);
        KeptMean = rate < Small ? Series(rate, 1) : (1 - Kept) / rate;
        SteadyMean = rate < Small ? Series(rate, 2) : (1 - KeptMean) / rate;
    }

    /// <summary>Share of the minute's starting concentration that is there at its end.</summary>
    public double Kept { get; }

    /// <summary>Mean over the minute of what was there at its start, per unit.</summary>
    public double KeptMean { get; }

    /// <summary>At the minute's end, per unit of steady source.</summary>
    public double SteadyEnd => KeptMean;

    /// <summary>Mean over the minute, per unit of steady source.</summary>
    public double SteadyMean { get; }

    /// <summary>At the minute's end, per unit of a source that fades at <paramref name="filmRate"/>.</summary>
    public double FadingEnd(double filmRate) => Math.Abs(rate - filmRate) < Alike
        ? Math.Exp(-(rate + filmRate) / 2)
        : (Math.Exp(-filmRate) - Kept) / (rate - filmRate);

    /// <summary>Mean over the minute, per unit of a source that fades at <paramref name="filmRate"/>.</summary>
    public double FadingMean(double filmRate) => Math.Abs(rate - filmRate) < Alike
        ? FallOfMean((rate + filmRate) / 2)
        : (MeanOfDecay(filmRate) - KeptMean) / (rate - filmRate);

    /// <summary>(1 − e^−x)/x.</summary>
    private static double MeanOfDecay(double decay) => decay < Small ? Series(decay, 1) : (1 - Math.Exp(-decay)) / decay;

    /// <summary>Minus the slope of <see cref="MeanOfDecay"/>: ∫ t·e^(−x·t) dt over the minute.</summary>
    private static double FallOfMean(double decay)
    {
        if (decay >= Small)
            return (MeanOfDecay(decay) - Math.Exp(-decay)) / decay;

        // Σ (−x)^n / (n!·(n+2))
        double sum = 0, term = 1;
        for (var n = 0; n < 9; n++)
        {
            sum += term / (n + 2);
            term *= -decay / (n + 1);
        }

        return sum;
    }

    /// <summary>Σ (−x)^n / (n + skipped)! from n = 0.</summary>
    private static double Series(double decay, int skipped)
    {
        double sum = 0, term = skipped == 1 ? 1 : 0.5;
        for (var n = 0; n < 9; n++)
        {
            sum += term;
            term *= -decay / (n + 1 + skipped);
        }

        return sum;
    }
}
