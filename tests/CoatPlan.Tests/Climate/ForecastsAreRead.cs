using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Problems;

namespace CoatPlan.Tests.Climate;

public class ForecastsAreRead
{
    private const string Header = "time,air °F,humidity %,wind mph,rain mm\n";

    [Fact]
    public void A_file_as_in_the_contract_is_read()
    {
        var forecast = Read(Header + "2027-05-14 16:00,68,55,5,0\n2027-05-14 17:00,70,50,15,1.5\n");

        forecast.Repeats.ShouldBeFalse();
        forecast.Rows.Length.ShouldBe(2);
        forecast.Rows[1].Time.ShouldBe(new LocalDateTime(2027, 5, 14, 17, 0));
        forecast.Rows[1].Air.DegreesFahrenheit.ShouldBe(70, 1e-9);
        forecast.Rows[1].Humidity.Percent.ShouldBe(50, 1e-9);
        forecast.Rows[1].Wind.MilesPerHour.ShouldBe(15, 1e-9);
        forecast.Rows[1].Rain.Millimeters.ShouldBe(1.5);
    }

    [Theory]
    [InlineData("Time,Temperature (°C),RH [%]\n2027-05-14T16:00,20,50")]
    [InlineData("\uFEFFtimestamp,temp_C,relative_humidity_%\r\n2027-05-14T16:00:00,20,50\r\n")]
    [InlineData("time;air °C;humidity %\n2027-05-14 16:00;20,0;50,0\n")]
    [InlineData("time\tair K\thumidity pct\n2027-05-14 16:00\t293.15\t50\n")]
    [InlineData("# from the station\n\ndate time,feels like °C,air deg F,humidity percent\n2027-05-14 16:00,3,\"68\",50\n")]
    [InlineData("time,air celsius,dew point °C\n2027-05-14 16:00,20,9.26\n")]
    public void Everyday_spellings_of_the_header_are_read(string text)
    {
        var row = Read(text).Rows.Single();

        row.Time.ShouldBe(new LocalDateTime(2027, 5, 14, 16, 0));
        row.Air.DegreesCelsius.ShouldBe(20, 1e-9);
        row.Humidity.Percent.ShouldBe(50, 0.05);
        row.Wind.MetersPerSecond.ShouldBe(0);
    }

    [Fact]
    public void Every_mistake_is_found_in_one_go_with_its_line_and_column()
    {
        var problems = Problems(Header
            + "2027-05-14 16:00,warm,55,5,0\n"
            + "14/05/2027 17:00,70,140,5,0\n"
            + "\n"
            + "2027-05-14 18:00,70,50\n"
            + "2027-05-14 19:00,70,50,5,0\n"
            + "2027-05-14 19:00,70,0,5,-1\n");

        problems.Select(problem => (problem.Code, problem.Line, problem.Column)).ShouldBe([
            ("not-a-number", 2, 18), ("not-a-time", 3, 1), ("out-of-range", 3, 21), ("missing-field", 5, 21),
            ("out-of-range", 7, 21), ("out-of-range", 7, 25)]);
        problems[0].ToString().ShouldBe("week.csv:2:18: the air temperature is `warm`, expected a number");
    }

    [Fact]
    public void A_row_that_is_not_later_than_the_one_above_is_a_mistake() =>
        Problems(Header + "2027-05-14 16:00,68,55,5,0\n2027-05-14 16:00,68,55,5,0\n").Single().ShouldSatisfyAllConditions(
            problem => problem.Code.ShouldBe("order"), problem => problem.Line.ShouldBe(3));

    [Theory]
    [InlineData("", "empty-file")]
    [InlineData("time,air °F,humidity %\n", "empty-file")]
    [InlineData("time,air,humidity %\n2027-05-14 16:00,68,55\n", "no-unit")]
    [InlineData("time,air °F,humidity\n2027-05-14 16:00,68,55\n", "no-unit")]
    [InlineData("time,humidity %\n2027-05-14 16:00,55\n", "missing-column")]
    [InlineData("time,air mph,humidity %\n2027-05-14 16:00,68,55\n", "missing-column")]
    [InlineData("time,air °F\n2027-05-14 16:00,68\n", "missing-column")]
    [InlineData("time,air °F,temp °C,humidity %\n2027-05-14 16:00,68,20,55\n", "repeated-column")]
    [InlineData("time,air °F\0,humidity %\n", "binary")]
    public void A_file_that_is_no_forecast_says_why(string text, string code) =>
        Problems(text).ShouldContain(problem => problem.Code == code);

    [Fact]
    public void A_misspelt_column_is_guessed() =>
        Problems("time,aire °F,humidity %\n2027-05-14 16:00,68,55\n").Single().Mend.ShouldBe("`air °F`");

    [Fact]
    public void Between_rows_the_weather_is_linear()
    {
        var climate = In(Read(Header + "2027-05-14 15:00,60,60,0,0\n2027-05-14 19:00,80,40,0,0\n"));

        climate.Air.At(60).Air.DegreesFahrenheit.ShouldBe(70, 1e-9);
        climate.Air.At(60).Humidity.Percent.ShouldBe(50, 1e-9);
    }

    [Fact]
    public void After_the_last_row_no_coat_is_begun_and_what_is_wet_dries_as_in_that_row()
    {
        var climate = In(Read(Header + "2027-05-14 16:00,70,50,0,0\n2027-05-14 20:00,52,50,0,0\n"));
        var metal = climate.Metal(Samples.Fender);
        var starts = CoatStarts.Of(climate, Samples.Black, metal);

        Drying.Reaches(Samples.Black, DryingStage.Touch, metal, 5000).ShouldBe(5050);
        starts.First(300, 10).ShouldBeNull();
        starts.WhyNot(300, 10)!.Rule.ShouldBe(StartRule.BeyondForecast);
        (240 - starts.TouchDry(starts.Last(0, 10), 10)!.Value).ShouldBeInRange(0, 1);
    }

    [Fact]
    public void Before_the_first_row_no_coat_is_begun() =>
        CoatStarts.Of(In(Late()), Samples.Black, In(Late()).Metal(Duration.Zero)).First(0, 10).ShouldBe(120);

    /// <summary>The last row lies on the first minute of the job's second day; that minute is known, and the same minute of later days is not.</summary>
    [Fact]
    public void A_last_row_on_the_first_minute_of_a_day_says_nothing_of_later_days()
    {
        var climate = In(Read(Header + "2027-05-14 16:00,70,50,0,0\n2027-05-15 16:00,70,50,0,0\n"));
        var starts = CoatStarts.Of(climate, Samples.Black with { Times = Samples.Times(0) }, climate.Metal(Duration.Zero));

        starts.First(1440, 0).ShouldBe(1440);
        starts.First(1441, 0).ShouldBeNull();
    }

    [Fact]
    public void After_a_short_cold_gust_a_coat_may_start_at_once()
    {
        var climate = In(Read(Header + "2027-05-14 16:00,70,50,0,0\n2027-05-14 18:00,70,50,0,0\n2027-05-14 18:01,40,50,0,0\n"
            + "2027-05-14 18:05,40,50,0,0\n2027-05-14 18:06,70,50,0,0\n2027-05-14 22:00,70,50,0,0\n"));
        var label = Samples.Black with { Limits = Samples.WideLimits with { AirLow = Samples.Fahrenheit(50) } };
        var starts = CoatStarts.Of(climate, label, climate.Metal(Duration.Zero));

        starts.First(100, 10).ShouldBe(126);
        starts.Last(0, 10).ShouldBe(120 - 35);
    }

    [Fact]
    public void Across_a_gap_of_more_than_a_day_the_weather_is_not_known()
    {
        var climate = In(Read(Header + "2027-05-14 16:00,70,50,0,0\n2027-05-16 16:00,70,50,0,0\n2027-05-16 20:00,70,50,0,0\n"));

        CoatStarts.Of(climate, Samples.Black, climate.Metal(Duration.Zero)).First(1, 10).ShouldBe(2 * 1440);
    }

    [Fact]
    public void Outdoors_rain_and_wind_of_the_file_stop_the_spraying()
    {
        var text = Header + "2027-05-15 08:00,70,50,5,0\n2027-05-15 10:00,70,50,5,0\n2027-05-15 11:00,70,50,5,2\n2027-05-15 12:00,70,50,5,0\n"
            + "2027-05-15 14:00,70,50,25,0\n2027-05-15 15:00,70,50,25,0\n2027-05-15 16:00,70,50,0,0\n2027-05-15 19:00,70,50,0,0\n";
        var yard = PlaceClimate.Of(Samples.Yard(new HourlyWeather { Path = "week.csv" }), Samples.FridayAfternoon, Samples.Figures, Read(text));
        var starts = CoatStarts.Of(yard, Samples.Black, yard.Metal(Duration.Zero));
        var ten = 18 * 60;

        starts.Last(starts.First(0, 10)!.Value, 10).ShouldBe(ten - 35);
        starts.WhyNot(ten - 10, 10)!.ShouldBe(new StartHindrance(StartRule.Rain, ten - 10, ten + 1, ten + 120, 2 / 60.0, 0));
        starts.First(ten, 10).ShouldBe(ten + 120);
        starts.WhyNot(ten + 210, 10)!.Rule.ShouldBe(StartRule.Wind);
    }

    [Fact]
    public void A_forecast_without_its_rows_is_refused() =>
        Should.Throw<ArgumentException>(() => PlaceClimate.Of(
            Samples.Garage(new HourlyWeather { Path = "week.csv" }), Samples.FridayAfternoon, Samples.Figures));

    private static HourlyForecast Late() => Read(Header + "2027-05-14 18:00,70,50,0,0\n2027-05-14 20:00,70,50,0,0\n");

    private static PlaceClimate In(HourlyForecast forecast) => PlaceClimate.Of(
        Samples.Garage(new HourlyWeather { Path = "week.csv" }), Samples.FridayAfternoon, Samples.Figures, forecast);

    private static HourlyForecast Read(string text)
    {
        var reading = HourlyForecast.Read(text, "week.csv");
        reading.Problems.ShouldBeEmpty();
        return reading.Forecast!;
    }

    private static ImmutableArray<Problem> Problems(string text)
    {
        var reading = HourlyForecast.Read(text, "week.csv");
        reading.Forecast.ShouldBeNull();
        return reading.Problems;
    }
}
