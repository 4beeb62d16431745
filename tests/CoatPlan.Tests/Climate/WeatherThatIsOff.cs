using CoatPlan.Climate;
using CoatPlan.Jobs;
using UnitsNet;

namespace CoatPlan.Tests.Climate;

public class WeatherThatIsOff
{
    private static readonly SteadyWeather Steady = new() { Air = Temperature.FromDegreesCelsius(21), Humidity = Ratio.FromPercent(50) };

    [Fact]
    public void Off_by_nothing_it_is_the_same() => WeatherOff.Of(Steady, TemperatureDelta.Zero, TemperatureDelta.Zero).ShouldBeSameAs(Steady);

    [Fact]
    public void Colder_air_with_the_same_water_is_damper()
    {
        var colder = (SteadyWeather)WeatherOff.Of(Steady, TemperatureDelta.FromKelvins(-3), TemperatureDelta.Zero);

        colder.Air.DegreesCelsius.ShouldBe(18, 1e-9);
        colder.Humidity.ShouldBeGreaterThan(Steady.Humidity);
        Humidity.DewPoint(colder.Air, colder.Humidity).DegreesCelsius.ShouldBe(Humidity.DewPoint(Steady.Air, Steady.Humidity).DegreesCelsius, 1e-6);
    }

    [Fact]
    public void A_dew_point_never_passes_the_air()
    {
        var wet = (SteadyWeather)WeatherOff.Of(Steady, TemperatureDelta.FromKelvins(-10), TemperatureDelta.FromKelvins(10));

        wet.Humidity.DecimalFractions.ShouldBe(1, 1e-12);
    }
}
