namespace CoatPlan.Climate;

/// <summary>The air outside of any heater over one day, at each minute from the day's first to the next day's first.</summary>
/// <param name="Celsius">Air temperature, 1441 values.</param>
/// <param name="VapourPascals">Pressure of water vapour, never above saturation, 1441 values.</param>
/// <param name="WindMetresPerSecond">Wind, 1441 values; null in still air.</param>
/// <param name="RainMillimetres">Rain as the forecast gives it, 1441 values; null when dry.</param>
/// <param name="Known">Whether the forecast reaches this minute, 1441 values; null when all are known.</param>
internal sealed record WeatherDay(
    double[] Celsius,
    double[] VapourPascals,
    double[]? WindMetresPerSecond = null,
    double[]? RainMillimetres = null,
    bool[]? Known = null)
{
    /// <summary>Dew point of that vapour, 1441 values; in air that is saturated, rounding may put it a trace above the air.</summary>
    public double[] DewCelsius => field ??= Array.ConvertAll(VapourPascals, Humidity.DewPointCelsius);
}
