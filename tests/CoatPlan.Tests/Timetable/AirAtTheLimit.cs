namespace CoatPlan.Tests.Timetable;

/// <summary>Air and metal exactly at a limit are inside it; where they are just outside, the words do not claim that a figure is below itself.</summary>
public class AirAtTheLimit
{
    [Theory]
    [InlineData(50, 50)]
    [InlineData(90, 50)]
    [InlineData(70, 30)]
    [InlineData(70, 80)]
    [InlineData(50, 30)]
    public void A_coat_starts_at_once_in_steady_air_at_its_labels_limit(int fahrenheit, int percent)
    {
        var plan = new HandJob { Weather = $"steady: {{air: {fahrenheit} °F, humidity: {percent} %}}" }.Plan();

        plan.Reasons.ShouldBeEmpty();
        plan.Steps.Single(step => step.Kind == "coat").Start.Date.ShouldBe(HandJob.Friday.Date);
    }

    /// <summary>The humidity stays at the limit while the air warms by 2 °F an hour: saturation times share, divided by saturation again.</summary>
    [Theory]
    [InlineData(30)]
    [InlineData(80)]
    public void A_coat_starts_at_once_in_a_forecast_at_its_labels_limit(int percent)
    {
        var rows = Enumerable.Range(0, 24).Select(hour => FormattableString.Invariant($"2027-05-14 {hour:00}:00,{52 + hour},{percent}"));
        var plan = new HandJob { Weather = "hours: forecast.csv", Forecast = "time,air °F,humidity %\n" + string.Join('\n', rows) + "\n" }.Plan();

        plan.Steps.Single(step => step.Kind == "coat").Start.Date.ShouldBe(HandJob.Friday.Date);
    }

    /// <summary>
    /// Held at 50 °F, the label's lowest, over a night of 40 °F: metal that the heater has just brought there is short of it by less than anyone can measure, and dries.
    /// Label 3 h to handle at 70 °F: 50 °F is 11.11 °C less, 180 × 2^1.111 = 388.8 min.
    /// </summary>
    [Fact]
    public void A_film_dries_on_metal_at_the_labels_lowest()
    {
        var plan = new HandJob
        {
            Place = "volume: 4000 ft3, hold: 50 °F, heater: sealed",
            Weather = "daily: {low: 40 °F, high: 49 °F, dew-point: 30 °F}",
        }.Plan();

        HandJob.Wait(plan, "refit/one", "coat/one/1.1").LeastMin.ShouldNotBeNull().ShouldBe(389);
    }

    [Theory]
    [InlineData("steady: {air: 49.8 °F, humidity: 50 %}", "just below 50 °F")]
    [InlineData("steady: {air: 90.3 °F, humidity: 40 %}", "just above 90 °F")]
    [InlineData("steady: {air: 70 °F, humidity: 29.98 %}", "just below 30 %")]
    [InlineData("steady: {air: 70 °F, humidity: 80.02 %}", "just above 80 %")]
    [InlineData("steady: {air: 70 °F, humidity: 29.6 %}", "at least 30 % (29.6 % in")]
    public void A_figure_is_never_said_to_be_below_itself(string weather, string words)
    {
        var plan = new HandJob { Weather = weather }.Plan();

        string.Join('\n', plan.Reasons).ShouldContain(words);
    }
}
