using CoatPlan.Climate;
using CoatPlan.Jobs;

namespace CoatPlan.Tests.Climate;

public class HeatedAir
{
    private static readonly Place Cold = Samples.Garage(Samples.Steady(40, 80)) with { Hold = Samples.Fahrenheit(62) };

    [Fact]
    public void A_heater_holds_its_temperature_and_leaves_the_water_in_the_air()
    {
        var air = Samples.In(Cold with { Heater = HeaterKind.Sealed }).Air.At(600);

        air.Air.DegreesFahrenheit.ShouldBe(62, 1e-9);
        air.DewPoint.DegreesCelsius.ShouldBe(
            Humidity.DewPoint(Samples.Fahrenheit(40), UnitsNet.Ratio.FromPercent(80)).DegreesCelsius, 1e-9);
        air.Humidity.Percent.ShouldBeLessThan(40);
    }

    /// <summary>A night that falls to 40 °F below a dew point of 46 °F loses water: what is left is saturated at 40 °F, and heating adds none.</summary>
    [Fact]
    public void Water_that_fell_out_in_the_cold_is_not_in_the_heated_air()
    {
        var night = Samples.Garage(Samples.Daily(40, 70, 46)) with { Hold = Samples.Fahrenheit(62), Heater = HeaterKind.Sealed };
        var five = 13 * 60;

        Samples.In(night).Air.At(five).DewPoint.DegreesFahrenheit.ShouldBe(40, 1e-6);
        Samples.In(night).Air.At(five).Air.DegreesFahrenheit.ShouldBe(62, 1e-9);
    }

    [Fact]
    public void A_heater_does_nothing_while_the_weather_is_warmer_than_it_holds()
    {
        var air = Samples.In(Samples.Garage(Samples.Steady(75, 50)) with { Hold = Samples.Fahrenheit(62) }).Air.At(600);

        air.Air.DegreesFahrenheit.ShouldBe(75, 1e-9);
    }

    /// <summary>22 °F above the weather; after 30 min at a time constant of 30 min, 1/e of that.</summary>
    [Fact]
    public void With_the_heater_off_the_air_falls_toward_the_weather()
    {
        var air = Samples.In(Cold).WithHeaterOff(new HeaterOff(120)).Air;

        air.At(120).Air.DegreesFahrenheit.ShouldBe(62, 1e-9);
        air.At(150).Air.DegreesFahrenheit.ShouldBe(40 + 22 / Math.E, 1e-6);
        air.At(2000).Air.DegreesFahrenheit.ShouldBe(40, 0.01);
    }

    [Fact]
    public void With_the_heater_on_again_the_air_comes_back_as_slowly_as_it_fell()
    {
        var air = Samples.In(Cold).WithHeaterOff(new HeaterOff(120, 600)).Air;

        air.At(630).Air.DegreesFahrenheit.ShouldBe(62 - 22 / Math.E, 0.01);
        air.At(3000).Air.DegreesFahrenheit.ShouldBe(62, 0.01);
    }

    [Fact]
    public void A_sealed_heater_keeps_working()
    {
        var air = Samples.In(Cold with { Heater = HeaterKind.Sealed }).WithHeaterOff(new HeaterOff(120)).Air;

        air.At(600).Air.DegreesFahrenheit.ShouldBe(62, 1e-9);
    }

    [Fact]
    public void A_heater_off_time_that_ends_before_it_begins_is_refused() =>
        Should.Throw<ArgumentException>(() => Samples.In(Cold).WithHeaterOff(new HeaterOff(100, 50)));
}
