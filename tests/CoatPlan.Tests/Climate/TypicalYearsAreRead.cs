using System.Globalization;
using System.Text;
using CoatPlan.Climate;
using CoatPlan.Jobs;

namespace CoatPlan.Tests.Climate;

public class TypicalYearsAreRead
{
    [Fact]
    public void The_row_of_a_month_day_and_hour_holds_at_the_end_of_that_hour_in_any_year()
    {
        var climate = In(2027, Year(At(5, 14, 20, air: 12.5, humidity: 60)));

        // 14 May, the hour that ends at 20:00, four hours after the start.
        climate.Air.At(240).Air.DegreesCelsius.ShouldBe(12.5, 1e-9);
        climate.Air.At(240).Humidity.Percent.ShouldBe(60, 1e-9);
        climate.Air.At(180).Air.DegreesCelsius.ShouldBe(20, 1e-9);
    }

    [Fact]
    public void The_last_hour_of_a_year_goes_on_into_the_next()
    {
        var climate = PlaceClimate.Of(
            Place(), new LocalDateTime(2027, 12, 31, 12, 0), Samples.Figures, Read(Year(At(12, 31, 24, air: 3, humidity: 60), At(1, 1, 1, air: 4, humidity: 60))));

        climate.Air.At(12 * 60).Air.DegreesCelsius.ShouldBe(3, 1e-9);
        climate.Air.At(13 * 60).Air.DegreesCelsius.ShouldBe(4, 1e-9);
    }

    [Fact]
    public void A_leap_day_takes_the_rows_of_the_day_before()
    {
        var climate = PlaceClimate.Of(
            Place(), new LocalDateTime(2028, 2, 29, 0, 0), Samples.Figures, Read(Year(At(2, 28, 14, air: 9, humidity: 60))));

        climate.Air.At(14 * 60).Air.DegreesCelsius.ShouldBe(9, 1e-9);
    }

    [Fact]
    public void A_dew_point_stands_in_for_a_missing_humidity()
    {
        var text = Year(At(5, 14, 20, air: 20, humidity: 999, dew: 9.26));

        In(2027, text).Air.At(240).Humidity.Percent.ShouldBe(50, 0.1);
    }

    [Fact]
    public void A_missing_temperature_is_a_mistake_with_its_place()
    {
        var reading = HourlyForecast.Read(Year(At(1, 1, 2, air: 99.9, humidity: 60)), "year.epw");

        reading.Forecast.ShouldBeNull();
        var problem = reading.Problems.Single();
        (problem.Code, problem.Line, problem.Tried).ShouldBe(("out-of-range", 10, "99.9"));
    }

    [Fact]
    public void Rain_and_wind_are_read()
    {
        var row = Read(Year(At(5, 14, 20, air: 20, humidity: 50))).Rows.First(row => row.Time == new LocalDateTime(2000, 5, 14, 20, 0));

        row.Wind.MetersPerSecond.ShouldBe(2.1);
        row.Rain.Millimeters.ShouldBe(0.4);
    }

    private static PlaceClimate In(int year, string text) =>
        PlaceClimate.Of(Place(), new LocalDateTime(year, 5, 14, 16, 0), Samples.Figures, Read(text));

    private static Place Place() => Samples.Garage(new HourlyWeather { Path = "year.epw" });

    private static HourlyForecast Read(string text)
    {
        var reading = HourlyForecast.Read(text, "year.epw");
        reading.Problems.ShouldBeEmpty();
        return reading.Forecast!;
    }

    private static (int Month, int Day, int Hour, double Air, double Humidity, double Dew) At(
        int month, int day, int hour, double air, double humidity, double dew = 5) => (month, day, hour, air, humidity, dew);

    /// <summary>A year of 20 °C and 50 %, with some hours of their own.</summary>
    private static string Year(params (int Month, int Day, int Hour, double Air, double Humidity, double Dew)[] own)
    {
        var text = new StringBuilder("LOCATION,Nowhere,-,-,TMY,000000,0.0,0.0,0.0,0.0\n");
        for (var line = 2; line <= 8; line++)
        {
            text.Append("COMMENTS ").Append(line).Append(",made for a test\n");
        }

        for (var date = new LocalDate(2001, 1, 1); date.Year == 2001; date = date.PlusDays(1))
        {
            for (var hour = 1; hour <= 24; hour++)
            {
                var found = own.FirstOrDefault(row => row.Month == date.Month && row.Day == date.Day && row.Hour == hour);
                var (air, humidity, dew) = found.Month > 0 ? (found.Air, found.Humidity, found.Dew) : (20, 50, 9.3);
                text.Append(CultureInfo.InvariantCulture, $"2001,{date.Month},{date.Day},{hour},60,?9?9,{air},{dew},{humidity},101325,0,0,300,0,0,0,0,0,0,0,180,2.1,")
                    .Append("5,5,20,77777,9,999999999,100,0.1,0,88,0.2,0.4,1\n");
            }
        }

        return text.ToString();
    }
}
