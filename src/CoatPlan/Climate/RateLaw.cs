namespace CoatPlan.Climate;

/// <summary>How fast something dries, as a share of a reference pace: 1 means as fast as at the label's conditions.</summary>
/// <remarks>
/// At 50 °F a film labelled at 70 °F runs at 2^(−11.1/10) = 0.46: the label's 30 minutes take 65. At 90 °F it would run at 2.2, but a wait
/// is not shortened below the label. Where the label carries a table, one minute counts as the share of the table's time at that temperature; a
/// row that is quicker than the label's own time, such as one for 90 °F, closes windows early but opens nothing sooner.
/// Source of the doubling for each 10 °C: trade training note (common practice).
/// </remarks>
internal sealed record RateLaw
{
    /// <summary>Rates this close to 1 are 1: at the label's own conditions a wait is the label's, to the minute.</summary>
    private const double AsTheLabel = 1e-9;

    /// <summary>What sets the pace.</summary>
    public required RateKind Kind { get; init; }

    /// <summary>On which side to err.</summary>
    public required RateBound Bound { get; init; }

    /// <summary>Temperature at which the reference pace holds, °C.</summary>
    public required double AtCelsius { get; init; }

    /// <summary>Relative humidity at which the reference pace holds, 0 to 1.</summary>
    public required double AtRelative { get; init; }

    /// <summary>Factor of the rate for each 10 K, 1 or more.</summary>
    public required double Q10 { get; init; }

    /// <summary>Below this air temperature nothing is credited, °C.</summary>
    public double LowestAirCelsius { get; init; } = double.NegativeInfinity;

    /// <summary>Below this surface temperature nothing is credited, °C.</summary>
    public double LowestSurfaceCelsius { get; init; } = double.NegativeInfinity;

    /// <summary>The label's own times, which beat the doubling; null: none.</summary>
    public TimeTable? Table { get; init; }

    /// <summary>The label's own time beside the table, minutes: no wait is shorter than this, and what closes never stays open longer.</summary>
    public double LabelMinutes { get; init; }

    /// <summary>The rate at one moment.</summary>
    /// <param name="surfaceCelsius">Temperature of the film.</param>
    /// <param name="airCelsius">Temperature of the air.</param>
    /// <param name="relative">Relative humidity of the air, 0 to 1.</param>
    public double At(double surfaceCelsius, double airCelsius, double relative)
    {
        if (Bound == RateBound.Floor
            && (airCelsius < LowestAirCelsius - StartRules.Rounding || surfaceCelsius < LowestSurfaceCelsius - StartRules.Rounding))
        {
            return 0;
        }

        return Table is null
            ? Bounded(Warmth(surfaceCelsius) * Water(surfaceCelsius, airCelsius, relative))
            : TableRate(Table, surfaceCelsius) * Bounded(Water(surfaceCelsius, airCelsius, relative));
    }

    private double Warmth(double surfaceCelsius) =>
        Kind == RateKind.Evaporation ? 1 : Math.Pow(Q10, (surfaceCelsius - AtCelsius) / 10);

    private double Water(double surfaceCelsius, double airCelsius, double relative) => Kind switch
    {
        RateKind.WarmthAndDryness => (1 - relative) / (1 - AtRelative),
        RateKind.WarmthAndDamp => Vapour(airCelsius, relative) / Vapour(AtCelsius, AtRelative),
        RateKind.Evaporation => Math.Max(0, Humidity.SaturationPascals(surfaceCelsius) - Vapour(airCelsius, relative))
            / (Humidity.SaturationPascals(AtCelsius) - Vapour(AtCelsius, AtRelative)),
        _ => 1,
    };

    private double TableRate(TimeTable table, double surfaceCelsius)
    {
        var minutes = table.MinutesAt(surfaceCelsius);
        return 1 / (Bound == RateBound.Floor ? Math.Max(minutes, LabelMinutes) : Math.Min(minutes, LabelMinutes));
    }

    private double Bounded(double rate) =>
        Math.Abs(rate - 1) <= AsTheLabel ? 1
        : Bound == RateBound.Floor ? Math.Min(1, rate)
        : Math.Max(1, rate);

    private static double Vapour(double celsius, double relative) => Humidity.SaturationPascals(celsius) * relative;
}
