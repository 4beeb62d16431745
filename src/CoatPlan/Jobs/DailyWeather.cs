using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>The same day over and over, between a low and a high.</summary>
public sealed record DailyWeather : Weather
{
    /// <summary>Lowest air temperature of the day.</summary>
    public required Temperature Low { get; init; }

    /// <summary>Highest air temperature of the day, at least the low.</summary>
    public required Temperature High { get; init; }

    /// <summary>Dew point; null where <see cref="Humidity"/> is given.</summary>
    public Temperature? DewPoint { get; init; }

    /// <summary>Relative humidity at the day's mean air, 0 to 1; null where <see cref="DewPoint"/> is given.</summary>
    public Ratio? Humidity { get; init; }
}
