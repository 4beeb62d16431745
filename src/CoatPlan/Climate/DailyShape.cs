namespace CoatPlan.Climate;

/// <summary>How the air's temperature runs over a day whose lowest and highest are known.</summary>
/// <remarks>
/// Coldest at five in the morning, warmest from two to three in the afternoon. The table gives, at each clock hour, the share of the day's
/// range by which the air is below its highest. Source: ASHRAE Fundamentals 2021 ch. 14 Table 6 (published, read second-hand).
/// </remarks>
internal static class DailyShape
{
    private const int MinutesInHour = 60;
    private const int MinutesInDay = 1440;

    private static readonly ImmutableArray<double> ShareBelowHighest =
    [
        0.82, 0.88, 0.92, 0.95, 0.98, 1.00, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23,
        0.13, 0.05, 0.00, 0.00, 0.06, 0.14, 0.24, 0.39, 0.50, 0.59, 0.68, 0.75,
    ];

    /// <summary>The mean over the day of the share below the highest.</summary>
    public static double MeanShare { get; } = ShareBelowHighest.Average();

    /// <summary>The share of the range below the highest, linear between clock hours.</summary>
    /// <param name="minuteOfDay">Minutes since midnight; any number, taken modulo one day.</param>
    public static double ShareAt(int minuteOfDay)
    {
        var minute = (minuteOfDay % MinutesInDay + MinutesInDay) % MinutesInDay;
        var hour = minute / MinutesInHour;
        var part = minute % MinutesInHour / (double)MinutesInHour;
        var from = ShareBelowHighest[hour];
        return from + (ShareBelowHighest[(hour + 1) % ShareBelowHighest.Length] - from) * part;
    }
}
