using CoatPlan.Jobs;

namespace CoatPlan.Climate;

/// <summary>The three ways in which a job tells its weather, each as days from the job's start.</summary>
internal static class Weathers
{
    /// <summary>The same air at every minute.</summary>
    public static Days<WeatherDay> Steady(double celsius, double relative)
    {
        var day = new WeatherDay(Filled(_ => celsius), Filled(_ => Humidity.SaturationPascals(celsius) * relative));
        return new Days<WeatherDay>((_, _) => day);
    }

    /// <summary>The same day again and again, with its water content constant and capped at saturation.</summary>
    /// <param name="minuteOfDay">Minutes from midnight to the job's start.</param>
    /// <param name="lowCelsius">Lowest of the day.</param>
    /// <param name="highCelsius">Highest of the day, not below the lowest.</param>
    /// <param name="vapourPascals">Water vapour the air would hold were it never saturated.</param>
    public static Days<WeatherDay> Daily(int minuteOfDay, double lowCelsius, double highCelsius, double vapourPascals)
    {
        var celsius = Filled(m => highCelsius - (highCelsius - lowCelsius) * DailyShape.ShareAt(minuteOfDay + m));
        var day = new WeatherDay(celsius, Filled(m => Math.Min(vapourPascals, Humidity.SaturationPascals(celsius[m]))));
        return new Days<WeatherDay>((_, _) => day);
    }

    /// <summary>The weather of a job.</summary>
    /// <param name="weather">What the job says.</param>
    /// <param name="start">The job's start.</param>
    /// <param name="forecast">The forecast it names.</param>
    public static Days<WeatherDay> Of(Weather weather, LocalDateTime start, HourlyForecast? forecast) => weather switch
    {
        SteadyWeather steady => Steady(steady.Air.DegreesCelsius, Damp(steady.Humidity.DecimalFractions)),
        DailyWeather daily => Daily(
            start.Hour * 60 + start.Minute, daily.Low.DegreesCelsius, daily.High.DegreesCelsius, Vapour(daily)),
        HourlyWeather => ForecastDays.Of(
            forecast ?? throw new ArgumentException("The job's weather is a forecast file: its rows must be given.", nameof(forecast)), start),
        _ => throw new ArgumentOutOfRangeException(nameof(weather), weather, "There is no such form of weather."),
    };

    private static double Vapour(DailyWeather daily)
    {
        var (low, high) = (daily.Low.DegreesCelsius, daily.High.DegreesCelsius);
        return daily.DewPoint is { } dew
            ? Humidity.SaturationPascals(dew.DegreesCelsius)
            : Humidity.SaturationPascals(high - (high - low) * DailyShape.MeanShare) * Damp(daily.Humidity!.Value.DecimalFractions);
    }

    /// <summary>Air without any water has no dew point; this little does no harm to any sum.</summary>
    private static double Damp(double relative) => Math.Max(1e-4, relative);

    private static double[] Filled(Func<int, double> at)
    {
        var values = new double[Days<WeatherDay>.Minutes + 1];
        for (var minute = 0; minute < values.Length; minute++)
        {
            values[minute] = at(minute);
        }

        return values;
    }
}
