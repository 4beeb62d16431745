namespace CoatPlan.Tests.Validator;

/// <summary>The validator reads what people write; a reader that misreads would let a wrong plan pass.</summary>
public class ReadingTests
{
    [Theory]
    [InlineData("10 min", 10)]
    [InlineData("1.5 h", 90)]
    [InlineData("1 1/2 h", 90)]
    [InlineData("2 d", 2880)]
    [InlineData("1/2 h", 30)]
    public void Times_are_minutes(string text, double minutes) => Reading.Minutes(text)!.Value.ShouldBe(minutes, 1e-9);

    [Theory]
    [InlineData("8 ft2", 0.74322432)]
    [InlineData("1,152 in2", 0.74322432)]
    [InlineData("8 sq ft", 0.74322432)]
    [InlineData("8 ft²", 0.74322432)]
    [InlineData("8 ft^2", 0.74322432)]
    [InlineData("0.5 m2", 0.5)]
    public void Areas_are_square_metres(string text, double squareMetres) => Reading.SquareMetres(text)!.Value.ShouldBe(squareMetres, 1e-9);

    [Theory]
    [InlineData("70 °F", 21.1111)]
    [InlineData("50F", 10)]
    [InlineData("-5 °C", -5)]
    public void Temperatures_are_celsius(string text, double celsius) => Reading.Celsius(text)!.Value.ShouldBe(celsius, 1e-4);

    [Theory]
    [InlineData("50-90 °F", "50 °F", "90 °F")]
    [InlineData("10 min-1 h", "10 min", "1 h")]
    [InlineData("0-20.04 °C", "0 °C", "20.04 °C")]
    [InlineData("30-80 %", "30 %", "80 %")]
    [InlineData("5 min - 24 h", "5 min", "24 h")]
    public void Ranges_have_two_ends(string text, string low, string high) => Reading.Ends(text).ShouldBe((low, high));

    [Theory]
    [InlineData("85 %")]
    [InlineData("after 24 h")]
    [InlineData("-5 °C")]
    public void One_figure_is_no_range(string text) => Reading.Ends(text).ShouldBeNull();

    [Fact]
    public void A_unit_of_another_kind_is_not_read() => Reading.SquareMetres("8 ft").ShouldBeNull();

    [Fact]
    public void A_date_beats_a_day_beats_a_range_and_a_night_ends_the_next_morning()
    {
        var hours = CrewHours.Read(Mapping("{Mon-Fri: 17:00-19:00, Wed: 08:00-12:00, 2027-05-12: none, Thu: 22:00-02:00}"), setUp: 10, putAway: 5);

        double monday = WallMinutes.Read("2027-05-10T00:00:00");
        hours.Touching(monday, monday + 7 * WallMinutes.Day).Select(span => $"{WallMinutes.Write(span.Start)}/{WallMinutes.Write(span.End)}").ShouldBe(
        [
            "2027-05-10T17:10:00/2027-05-10T18:55:00",
            "2027-05-11T17:10:00/2027-05-11T18:55:00",
            "2027-05-13T22:10:00/2027-05-14T01:55:00",
            "2027-05-14T17:10:00/2027-05-14T18:55:00",
        ]);
    }

    [Fact]
    public void An_hourly_file_is_read_between_its_rows_and_spraying_in_its_wind_is_seen()
    {
        var weather = Weather.Hours("time,air °F,humidity %,wind mph,rain mm\n2027-05-15 08:00,50,80,4,0\n2027-05-15 10:00,68,60,14,0\n")!;

        double nine = WallMinutes.Read("2027-05-15 09:00");
        weather.AirC(nine).ShouldBe(15, 1e-9);
        weather.Humidity(nine).ShouldBe(0.7, 1e-6);
        weather.WindMph!(nine).ShouldBe(9, 1e-9);
    }

    private static YamlDotNet.RepresentationModel.YamlMappingNode Mapping(string yaml)
    {
        var stream = new YamlDotNet.RepresentationModel.YamlStream();
        stream.Load(new StringReader(yaml));
        return (YamlDotNet.RepresentationModel.YamlMappingNode)stream.Documents[0].RootNode;
    }
}
