using CoatPlan.Vapour;

namespace CoatPlan.Tests.Vapour;

public sealed class CoatVapours
{
    [Fact]
    public void A_film_holds_a_twentieth_of_its_solvent_when_it_can_be_touched()
    {
        var time = CoatVapour.FilmTime(Duration.FromMinutes(30), UnitsNet.Ratio.FromPercent(5));

        Math.Exp(-30 / time.TotalMinutes).ShouldBe(0.05, 1e-9);
    }

    [Fact]
    public void A_film_that_never_dries_has_no_release() =>
        Should.Throw<ArgumentOutOfRangeException>(() => CoatVapour.FilmTime(Duration.Zero, UnitsNet.Ratio.FromPercent(5)));
}
