using CoatPlan.Problems;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads <c>weather</c>, in exactly one of its forms.</summary>
internal static class WeatherReading
{
    /// <returns>Null: a required part is missing or wrong, which is noted.</returns>
    public static Weather? Read(MapReading? weather)
    {
        if (weather is null) return null;
        var steady = Steady(weather.Map("steady"));
        var daily = Daily(weather.Map("daily"));
        var hours = weather.Text("hours") is { } path ? new HourlyWeather { Path = path, Mark = weather.MarkOf("hours") } : null;
        return weather.OneOf("steady", "daily", "hours") switch
        {
            "steady" => steady,
            "daily" => daily,
            "hours" => hours,
            _ => null,
        };
    }

    private static SteadyWeather? Steady(MapReading? steady)
    {
        if (steady is null) return null;
        var air = steady.Temperature("air");
        var humidity = steady.Ratio("humidity");
        if (air is null || humidity is null) return null;
        return new() { Air = air.Value, Humidity = humidity.Value, Mark = steady.Mark };
    }

    private static DailyWeather? Daily(MapReading? daily)
    {
        if (daily is null) return null;
        var low = daily.Temperature("low");
        var high = daily.Temperature("high");
        var dewPoint = daily.Temperature("dew-point");
        var humidity = daily.Ratio("humidity");
        string? damp = daily.OneOf("dew-point", "humidity");
        if (low?.Kelvins > high?.Kelvins)
        {
            daily.Note("high", Sentences.Order("`high`", daily.Tried("high"), $"at least the low, `{daily.Tried("low")}`"));
        }

        if (dewPoint?.Kelvins > high?.Kelvins)
        {
            daily.Note("dew-point", Sentences.Order("`dew-point`", daily.Tried("dew-point"), $"at most the high, `{daily.Tried("high")}`"));
        }

        if (low is null || high is null || damp is null) return null;
        return new() { Low = low.Value, High = high.Value, DewPoint = dewPoint, Humidity = humidity, Mark = daily.Mark };
    }
}
