using CoatPlan.Jobs;
using UnitsNet;

namespace CoatPlan.Climate;

/// <summary>Weather that turns out otherwise than told: so much warmer or colder, so much damper or drier, all the time.</summary>
/// <remarks>A forecast of 70 °F with a dew point of 50 °F that is 5 °F too warm and right about the water: 65 °F, the dew point still 50 °F, the air damper for it.</remarks>
public static class WeatherOff
{
    private const double LeastRelative = 1e-4;

    /// <summary>The weather of a place, off by so much.</summary>
    /// <param name="weather">The weather as told; of a forecast the file is what is off.</param>
    /// <param name="air">Warmer by so much; below 0 colder.</param>
    /// <param name="dewPoint">The dew point higher by so much; it never passes the air.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such form of weather.</exception>
    public static Weather Of(Weather weather, TemperatureDelta air, TemperatureDelta dewPoint) => weather switch
    {
        _ when IsNone(air, dewPoint) => weather,
        SteadyWeather steady => steady with
        {
            Air = steady.Air + air,
            Humidity = Relative(steady.Air + air, Humidity.DewPoint(steady.Air, Damp(steady.Humidity)) + dewPoint),
        },
        DailyWeather daily => daily with { Low = daily.Low + air, High = daily.High + air, DewPoint = DewPointOf(daily) + dewPoint, Humidity = null },
        HourlyWeather => weather,
        _ => throw new ArgumentOutOfRangeException(nameof(weather), weather, "There is no such form of weather."),
    };

    /// <summary>The rows of a forecast, off by so much.</summary>
    /// <param name="forecast">The forecast; null for none.</param>
    /// <param name="air">Warmer by so much; below 0 colder.</param>
    /// <param name="dewPoint">The dew point higher by so much; it never passes the air.</param>
    public static HourlyForecast? Of(HourlyForecast? forecast, TemperatureDelta air, TemperatureDelta dewPoint) =>
        forecast is null || IsNone(air, dewPoint)
            ? forecast
            : forecast with
            {
                Rows =
                [
                    .. forecast.Rows.Select(row => row with
                    {
                        Air = row.Air + air,
                        Humidity = Relative(row.Air + air, Humidity.DewPoint(row.Air, Damp(row.Humidity)) + dewPoint),
                    }),
                ],
            };

    private static bool IsNone(TemperatureDelta air, TemperatureDelta dewPoint) => air.Kelvins == 0 && dewPoint.Kelvins == 0;

    private static Temperature DewPointOf(DailyWeather daily) => daily.DewPoint
        ?? Humidity.DewPoint(
            Temperature.FromDegreesCelsius(daily.High.DegreesCelsius - (daily.High.DegreesCelsius - daily.Low.DegreesCelsius) * DailyShape.MeanShare),
            Damp(daily.Humidity!.Value));

    private static Ratio Damp(Ratio relative) => Ratio.FromDecimalFractions(Math.Max(LeastRelative, relative.DecimalFractions));

    private static Ratio Relative(Temperature air, Temperature dewPoint) => Damp(Humidity.Relative(air, dewPoint));
}
