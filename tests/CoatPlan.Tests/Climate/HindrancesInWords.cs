using CoatPlan.Climate;
using CoatPlan.Jobs;

namespace CoatPlan.Tests.Climate;

public class HindrancesInWords
{
    private static readonly PlaceClimate Place = Samples.In(Samples.Steady(70, 50));

    [Theory]
    [InlineData(StartRule.AirTooCold, 60, 60, 1060, 10, "air below 50 °F until Sat 09:40")]
    [InlineData(StartRule.SurfaceTooCold, 60, 60, 160, 10, "metal below 50 °F until 18:40")]
    [InlineData(StartRule.NearDewPoint, 60, 60, 160, 3, "metal less than 5.4 °F above the dew point until 18:40")]
    [InlineData(StartRule.TooDamp, 60, 130, 200, 0.65, "humidity over 65 % from 18:10, before the film is dry to touch")]
    [InlineData(StartRule.Wind, 60, 60, 160, 4.4704, "wind over 10 mph until 18:40")]
    [InlineData(StartRule.Rain, 60, 60, null, 0, "rain throughout")]
    [InlineData(StartRule.NeverDry, 60, 60, null, 0, "in this air the film would never be dry to touch")]
    public void A_hindrance_says_what_and_until_when(StartRule rule, int asked, int from, int? until, double limit, string words) =>
        StartHindrances.Say(new StartHindrance(rule, asked, from, until, 0, limit), Place, PrintUnits.Us).ShouldBe(words);

    [Fact]
    public void Metric_jobs_are_told_in_metric_units() =>
        StartHindrances.Say(new StartHindrance(StartRule.AirTooWarm, 0, 0, 60, 40, 32.2), Place, PrintUnits.Metric).ShouldBe("air above 32 °C until 17:00");

    [Fact]
    public void Every_rule_has_words()
    {
        foreach (var rule in Enum.GetValues<StartRule>())
        {
            StartHindrances.Say(new StartHindrance(rule, 0, 0, 60, 1, 1), Place, PrintUnits.Us).ShouldNotBeEmpty();
        }
    }
}
