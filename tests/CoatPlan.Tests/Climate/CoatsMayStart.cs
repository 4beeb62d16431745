using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Tests.Climate;

public class CoatsMayStart
{
    private static readonly Label Usual = Samples.Black with { Limits = Samples.UsualLimits };

    [Fact]
    public void In_good_steady_air_a_coat_may_start_at_any_minute()
    {
        var starts = Starts(Samples.Garage(Samples.Steady(70, 50)));

        starts.First(1234, 10).ShouldBe(1234);
        starts.Last(1234, 10).ShouldBe(CoatStarts.HorizonMinutes);
        starts.WhyNot(1234, 10).ShouldBeNull();
        starts.TouchDry(1234, 10).ShouldBe(1234 + 10 + 25);
    }

    [Theory]
    [InlineData(45, 50, StartRule.AirTooCold)]
    [InlineData(95, 50, StartRule.AirTooWarm)]
    [InlineData(70, 66, StartRule.TooDamp)]
    public void In_bad_steady_air_no_coat_may_start(double fahrenheit, double percent, StartRule rule)
    {
        var starts = Starts(Samples.Garage(Samples.Steady(fahrenheit, percent)));

        starts.First(0, 10).ShouldBeNull();
        starts.WhyNot(0, 10)!.Rule.ShouldBe(rule);
        starts.WhyNot(0, 10)!.Until.ShouldBeNull();
    }

    [Fact]
    public void At_the_limit_a_coat_may_start()
    {
        Starts(Samples.Garage(Samples.Steady(50, 65))).First(0, 10).ShouldBe(0);
        Starts(Samples.Garage(Samples.Steady(90, 65))).First(0, 10).ShouldBe(0);
    }

    /// <summary>
    /// 45 to 75 °F. Air is at 50 °F where the share below the highest is 25/30 = 0.8333: between 24:00 (0.82) and 01:00 (0.88) in the evening,
    /// at 00:13.3, and between 07:00 (0.91) and 08:00 (0.74) in the morning, at 07:27.06. The metal of a fender follows minutes later.
    /// </summary>
    [Fact]
    public void A_coat_waits_for_the_morning_and_must_be_dry_before_the_night()
    {
        var label = Usual with { Limits = Samples.UsualLimits with { HumidityHigh = Ratio.FromPercent(100), AboveDew = TemperatureDelta.FromKelvins(-50) } };
        var climate = Samples.In(Samples.Daily(45, 75, 30));
        var metal = climate.Metal(Duration.Zero);
        var starts = CoatStarts.Of(climate, label, metal);
        var midnight = 480;

        starts.First(midnight + 60, 10).ShouldBe(midnight + 7 * 60 + 28);
        var last = starts.Last(0, 10);
        starts.TouchDry(last, 10)!.Value.ShouldBeLessThanOrEqualTo(midnight + 13);
        starts.TouchDry(last + 1, 10)!.Value.ShouldBeGreaterThan(midnight + 13);
        starts.WhyNot(midnight + 60, 10)!.ShouldBe(starts.WhyNot(midnight + 60, 10)! with { Rule = StartRule.AirTooCold, Until = midnight + 7 * 60 + 28 });
    }

    [Fact]
    public void Cold_metal_holds_up_a_coat_that_the_air_permits()
    {
        var climate = Samples.In(Samples.Daily(45, 75, 30));
        var label = Usual with { Limits = Samples.UsualLimits with { HumidityHigh = Ratio.FromPercent(100) } };
        var seven = 15 * 60;

        var fender = CoatStarts.Of(climate, label, climate.Metal(Samples.Fender)).First(seven, 10)!.Value;
        var casting = CoatStarts.Of(climate, label, climate.Metal(Samples.Casting));

        casting.First(seven, 10)!.Value.ShouldBeGreaterThan(fender + 20);
        casting.WhyNot(fender, 10)!.Rule.ShouldBe(StartRule.SurfaceTooCold);
        CoatStarts.Of(climate, label, climate.Metal(Samples.Fender), climate.Metal(Samples.Casting)).First(seven, 10).ShouldBe(casting.First(seven, 10));
    }

    /// <summary>Saturday morning: the dew point is constant, the metal climbs away from it.</summary>
    [Fact]
    public void A_coat_waits_until_metal_is_three_degrees_above_the_dew_point()
    {
        var climate = Samples.In(Samples.Daily(52, 74, 50));
        var label = Usual with { Limits = Samples.UsualLimits with { HumidityHigh = Ratio.FromPercent(100) } };
        var metal = climate.Metal(Samples.Casting);
        var starts = CoatStarts.Of(climate, label, metal);
        var six = 14 * 60;

        var first = starts.First(six, 10)!.Value;

        starts.WhyNot(six, 10)!.Rule.ShouldBe(StartRule.NearDewPoint);
        Gap(first).ShouldBeGreaterThanOrEqualTo(3);
        Gap(first - 1).ShouldBeLessThan(3);

        double Gap(int minute) => (metal.At(minute).Surface - metal.At(minute).DewPoint).Kelvins;
    }

    [Fact]
    public void Outdoors_nothing_is_wet_from_the_evening_to_the_morning()
    {
        var starts = Starts(Samples.Yard(Samples.Steady(70, 50)));

        starts.Last(0, 10).ShouldBe(180 - 1 - 35);
        starts.First(180 - 35, 10).ShouldBe(16 * 60);
        starts.WhyNot(200, 10)!.ShouldBe(new StartHindrance(StartRule.Night, 200, 200, 16 * 60, 0, 0));
        starts.WhyNot(150, 10)!.From.ShouldBe(180);
    }

    [Fact]
    public void A_film_that_would_never_be_dry_is_not_begun()
    {
        var label = Usual with { Drying = DryingKind.Waterborne, Limits = Samples.WideLimits };

        var starts = CoatStarts.Of(Samples.In(Samples.Steady(70, 100)), label, Samples.In(Samples.Steady(70, 100)).Metal(Duration.Zero));

        starts.First(0, 10).ShouldBeNull();
        starts.WhyNot(0, 10)!.Rule.ShouldBe(StartRule.NeverDry);
    }

    /// <summary>Held at 62 °F over 52 °F: with the heater off the air falls to 52 °F, where the label still permits, and the film takes longer.</summary>
    [Fact]
    public void With_an_open_heater_a_coat_must_stand_the_air_that_falls()
    {
        var mild = Samples.Garage(Samples.Steady(52, 50)) with { Hold = Samples.Fahrenheit(62) };
        var cold = Samples.Garage(Samples.Steady(30, 80)) with { Hold = Samples.Fahrenheit(62) };

        Starts(mild).First(100, 10).ShouldBe(100);
        Starts(mild).TouchDry(100, 10)!.Value.ShouldBeGreaterThan(Starts(mild with { Heater = HeaterKind.Sealed }).TouchDry(100, 10)!.Value);
        Starts(cold).First(100, 10).ShouldBeNull();
        Starts(cold with { Heater = HeaterKind.Sealed }).First(100, 10).ShouldBe(100);
        Starts(cold).WhyNot(100, 10)!.Rule.ShouldBe(StartRule.AirTooCold);
        Starts(cold).WhyNot(100, 10)!.From.ShouldBeGreaterThan(100);
    }

    /// <summary>The heater that is told to be off from the start of the coat gives the same air that the coat was judged in.</summary>
    [Fact]
    public void With_an_open_heater_a_coat_is_judged_as_if_the_heater_went_off_at_its_start()
    {
        var mild = Samples.In(Samples.Garage(Samples.Daily(46, 60, 40)) with { Hold = Samples.Fahrenheit(66) });
        var start = 700;
        var off = mild.WithHeaterOff(new HeaterOff(start));

        var judged = CoatStarts.Of(mild, Usual, mild.Metal(Samples.Casting)).TouchDry(start, 12);

        judged.ShouldBe(Drying.Reaches(Usual, DryingStage.Touch, off.Metal(Samples.Casting), start + 12));
    }

    [Fact]
    public void The_permitted_starts_of_a_day_are_its_stretches()
    {
        var starts = Starts(Samples.Yard(Samples.Steady(70, 50)));

        starts.Ranges(0, 2 * 1440, 10).ShouldBe([new StartRange(0, 144), new StartRange(960, 960 + 660 - 36), new StartRange(2400, 2880)]);
    }

    [Fact]
    public void A_coat_of_less_than_no_time_is_refused()
    {
        var starts = Starts(Samples.Garage(Samples.Steady(70, 50)));

        Should.Throw<ArgumentOutOfRangeException>(() => starts.First(0, -1));
        Should.Throw<ArgumentException>(() => CoatStarts.Of(Samples.In(Samples.Steady(70, 50)), Usual));
    }

    private static CoatStarts Starts(Place place)
    {
        var climate = Samples.In(place);
        return CoatStarts.Of(climate, Usual, climate.Metal(Samples.Fender));
    }
}
