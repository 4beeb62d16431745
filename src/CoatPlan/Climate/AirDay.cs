namespace CoatPlan.Climate;

/// <summary>The air in the work place over one day, at each minute from the day's first to the next day's first.</summary>
/// <param name="Weather">The weather it follows from.</param>
/// <param name="Celsius">Air temperature, 1441 values.</param>
/// <param name="Relative">Relative humidity, at most 1, 1441 values.</param>
/// <param name="DewCelsius">Dew point, never above the air, 1441 values.</param>
/// <param name="LiftKelvin">How far the heater lifts the air above the weather, 1441 values; null where nothing but the weather counts.</param>
internal sealed record AirDay(WeatherDay Weather, double[] Celsius, double[] Relative, double[] DewCelsius, double[]? LiftKelvin);
