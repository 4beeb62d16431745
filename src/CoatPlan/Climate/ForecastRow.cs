using UnitsNet;

namespace CoatPlan.Climate;

/// <summary>The air outside of any heater at one local time.</summary>
/// <param name="Time">Local wall time.</param>
/// <param name="Air">Air temperature.</param>
/// <param name="Humidity">Relative humidity, more than 0 and at most 1.</param>
/// <param name="Wind">Wind, 0 where the file says nothing.</param>
/// <param name="Rain">Rain since the row before, 0 where the file says nothing.</param>
public sealed record ForecastRow(LocalDateTime Time, Temperature Air, Ratio Humidity, Speed Wind, Length Rain)
{
    /// <summary>A row of a file; the humidity counts before the dew point.</summary>
    internal static ForecastRow Of(LocalDateTime time, double celsius, double? relative, double? dewCelsius, double metresPerSecond, double millimetres)
    {
        var share = relative ?? CoatPlan.Climate.Humidity.RelativeFraction(celsius, CoatPlan.Climate.Humidity.SaturationPascals(dewCelsius!.Value));
        return new ForecastRow(
            time, Temperature.FromDegreesCelsius(celsius), Ratio.FromDecimalFractions(share), Speed.FromMetersPerSecond(metresPerSecond),
            Length.FromMillimeters(millimetres));
    }
}
