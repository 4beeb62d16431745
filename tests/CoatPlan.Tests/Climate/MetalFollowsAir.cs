using CoatPlan.Climate;

namespace CoatPlan.Tests.Climate;

public class MetalFollowsAir
{
    [Fact]
    public void Metal_starts_as_warm_as_the_air()
    {
        var climate = Samples.In(Samples.Daily(40, 80, 35));

        climate.Metal(Samples.Casting).At(0).Surface.ShouldBe(climate.Air.At(0).Air);
    }

    [Fact]
    public void Metal_in_steady_air_stays_at_the_air()
    {
        var metal = Samples.In(Samples.Steady(62, 60)).Metal(Samples.Casting);

        metal.At(5000).Surface.DegreesFahrenheit.ShouldBe(62, 1e-9);
    }

    /// <summary>While the air rises by k a minute, metal settles k·τ below it; from 09:00 to 10:00 the day rises by 0.17 of its range.</summary>
    [Fact]
    public void Metal_lags_a_steady_rise_by_rise_times_time_constant()
    {
        var metal = Samples.In(Samples.Daily(40, 80, 35)).Metal(Duration.FromMinutes(5));
        var atTen = 18 * 60;

        var conditions = metal.At(atTen);

        (conditions.Air - conditions.Surface).Kelvins.ShouldBe(0.17 * 40 / 1.8 / 60 * 5, 0.001);
    }

    /// <summary>95 % of a step after three time constants; the step is a heater that goes off with a place that cools at once.</summary>
    [Fact]
    public void Metal_has_made_up_95_percent_of_a_step_after_three_time_constants()
    {
        var place = Samples.Garage(Samples.Steady(50, 50)) with { Hold = Samples.Fahrenheit(70), CoolsIn = Duration.FromSeconds(1) };
        var metal = Samples.In(place).WithHeaterOff(new HeaterOff(100)).Metal(Duration.FromMinutes(20));

        var left = (metal.At(101 + 60).Surface.DegreesFahrenheit - 50) / 20;

        left.ShouldBe(Math.Exp(-3), 0.002);
    }

    [Fact]
    public void A_casting_is_colder_than_a_fender_while_the_morning_warms()
    {
        var climate = Samples.In(Samples.Daily(45, 75, 44));
        var nine = 17 * 60;

        var (casting, fender) = (climate.Metal(Samples.Casting).At(nine), climate.Metal(Samples.Fender).At(nine));

        casting.Surface.ShouldBeLessThan(fender.Surface);
        fender.Surface.ShouldBeLessThan(fender.Air);
    }
}
