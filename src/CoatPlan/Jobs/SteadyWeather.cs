using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>The same air all the time.</summary>
public sealed record SteadyWeather : Weather
{
    /// <summary>Air temperature.</summary>
    public required Temperature Air { get; init; }

    /// <summary>Relative humidity, 0 to 1.</summary>
    public required Ratio Humidity { get; init; }
}
