using CoatPlan.Problems;

namespace CoatPlan.Climate;

/// <summary>A forecast, or what is wrong in its file.</summary>
/// <param name="Forecast">The forecast; null where there are problems.</param>
/// <param name="Problems">All of them, in the order of the file; empty where it could be read.</param>
public sealed record ForecastReading(HourlyForecast? Forecast, ImmutableArray<Problem> Problems);
