using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Tests.Climate;
using UnitsNet;

namespace CoatPlan.Tests.Outside;

/// <summary>A day's temperature against the published fractions. Source: ASHRAE Fundamentals 2021 ch. 14 Table 6.</summary>
public class ClimateDailyShape
{
    [Fact]
    public void The_air_at_each_clock_hour_is_below_the_highest_by_the_published_share()
    {
        var air = Samples.In(Samples.Garage(new DailyWeather
        {
            Low = Temperature.FromDegreesCelsius(10), High = Temperature.FromDegreesCelsius(20), DewPoint = Temperature.FromDegreesCelsius(5),
        })).Air;

        var rows = CheckValues.Rows("daily-shape.csv").Where(row => row["model"] == "ashrae-2021").ToArray();

        rows.Length.ShouldBe(24);
        foreach (var row in rows)
        {
            // The job starts at 16:00, so that midnight is minute 480.
            var minute = 480 + 60 * (int)row.Number("hour");
            air.At(minute).Air.DegreesCelsius.ShouldBe(20 - 10 * row.Number("share"), 0.005 * 10, $"hour {row["hour"]}");
        }
    }

    /// <summary>Sum of the fractions 12.87, mean 0.53625.</summary>
    [Fact]
    public void Humidity_of_a_daily_weather_holds_at_the_mean_of_the_day()
    {
        var air = Samples.In(Samples.Garage(new DailyWeather
        {
            Low = Temperature.FromDegreesCelsius(10), High = Temperature.FromDegreesCelsius(20), Humidity = Ratio.FromPercent(60),
        })).Air;
        var mean = Temperature.FromDegreesCelsius(20 - 10 * 0.53625);

        air.At(22 * 60).DewPoint.DegreesCelsius.ShouldBe(Humidity.DewPoint(mean, Ratio.FromPercent(60)).DegreesCelsius, 1e-9);
    }
}
