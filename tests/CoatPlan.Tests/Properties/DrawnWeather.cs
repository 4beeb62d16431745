using System.Globalization;
using System.Text;

namespace CoatPlan.Tests.Properties;

/// <summary>The weather of a drawn job in °F; colder weather is the same with every temperature lower by as much.</summary>
internal sealed record DrawnWeather(string Kind, double LowF, double HighF, double DewF, int HumidityPercent)
{
    public string Text(double colderF) => Kind switch
    {
        "steady" => string.Create(CultureInfo.InvariantCulture, $"steady: {{air: {HighF - colderF:0.#} °F, humidity: {HumidityPercent} %}}"),
        "daily" => string.Create(CultureInfo.InvariantCulture, $"daily: {{low: {LowF - colderF:0.#} °F, high: {HighF - colderF:0.#} °F, dew-point: {DewF - colderF:0.#} °F}}"),
        "daily-humidity" => string.Create(CultureInfo.InvariantCulture, $"daily: {{low: {LowF - colderF:0.#} °F, high: {HighF - colderF:0.#} °F, humidity: {HumidityPercent} %}}"),
        _ => "hours: forecast.csv",
    };

    /// <summary>
    /// The hourly file that the job names: three weeks from the day it starts, warm by day, a shower on the third day, windy on the fifth; or cold but for two
    /// hours at noon.
    /// </summary>
    public string? Hours(DateTime first)
    {
        if (Kind is not ("hours" or "warm-hour"))
        {
            return null;
        }

        var text = new StringBuilder("time,air °F,humidity %,wind mph,rain mm\n");
        for (int hour = 0; hour < 21 * 24; hour++)
        {
            double warmth = Kind == "warm-hour"
                ? hour % 24 is >= 12 and <= 14 ? 1 : 0
                : 0.5 - 0.5 * Math.Cos((hour % 24 - 3) * Math.PI / 12);
            double rain = hour / 24 == 2 && hour % 24 is >= 10 and < 13 ? 1.5 : 0;
            double wind = hour / 24 == 4 ? 14 : 5;
            text.Append(CultureInfo.InvariantCulture, $"{first.AddHours(hour):yyyy-MM-dd HH:mm},{(Kind == "warm-hour" ? 44 : LowF) + warmth * (HighF - (Kind == "warm-hour" ? 44 : LowF)):0.#},{HumidityPercent + 20 * (0.5 - warmth):0},{wind:0},{rain:0.#}\n");
        }

        return text.ToString();
    }
}
