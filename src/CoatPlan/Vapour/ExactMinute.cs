namespace CoatPlan.Vapour;

/// <summary>The mass balance of a well-mixed room over one minute, solved, not stepped: C′ = steady + fading·e^(−k·t) − λ·C.</summary>
/// <remarks>
/// λ is Q/(K·V); k is one over the time constant of a drying film. The textbook balance of a room with a source (C∞ = K·G/Q) is the case without a
/// fading part. Factors belong to one λ; those of a film to one k beside it.
/// </remarks>
internal sealed class ExactMinute
{
    private const double Small = 1e-4;
    private const double Alike = 1e-7;

    private readonly double rate;

    public ExactMinute(double ratePerMinute)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(ratePerMinute);
        rate = ratePerMinute;
        Kept = Math.Exp(-rate);
        KeptMean = MeanOfDecay(rate);
        SteadyMean = rate < Small ? 0.5 - (rate / 6) + (rate * rate / 24) : (1 - KeptMean) / rate;
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
    public double FadingEnd(double filmRate) =>
        Math.Abs(rate - filmRate) < Alike ? Kept : (Math.Exp(-filmRate) - Kept) / (rate - filmRate);

    /// <summary>Mean over the minute, per unit of a source that fades at <paramref name="filmRate"/>.</summary>
    public double FadingMean(double filmRate)
    {
        if (Math.Abs(rate - filmRate) >= Alike)
            return (MeanOfDecay(filmRate) - KeptMean) / (rate - filmRate);
        // The limit of the quotient: minus the slope of the mean of a decay.
        return rate < Small ? 0.5 - (rate / 3) + (rate * rate / 8) : (KeptMean - Kept) / rate;
    }

    private static double MeanOfDecay(double decay) =>
        decay < Small ? 1 - (decay / 2) + (decay * decay / 6) : (1 - Math.Exp(-decay)) / decay;
}
