using CoatPlan.Problems;

namespace CoatPlan.Climate;

/// <summary>What a figure of a forecast may be; beyond them it is a slip or a code for "missing".</summary>
internal static class ForecastBounds
{
    /// <summary>Air temperature and dew point.</summary>
    public static Bounds Air { get; } = new(-70, 70, "°C");

    /// <summary>Relative humidity.</summary>
    public static Bounds Humidity { get; } = new(0, 100, "%", LeastIsOut: true);

    /// <summary>Wind.</summary>
    public static Bounds Wind { get; } = new(0, 100, "m/s");

    /// <summary>Rain between two rows.</summary>
    public static Bounds Rain { get; } = new(0, 1000, "mm");
}
