using CoatPlan.Presets;
using CoatPlan.Tests.Paint;
using CoatPlan.Vapour;
using UnitsNet;

namespace CoatPlan.Tests.Vapour;

public sealed class CoatVapours
{
    [Fact]
    public void A_film_holds_a_twentieth_of_its_solvent_when_it_can_be_touched()
    {
        var time = CoatVapour.FilmTime(Duration.FromMinutes(30), Ratio.FromPercent(5));

        Math.Exp(-30 / time.TotalMinutes).ShouldBe(0.05, 1e-9);
    }

    [Fact]
    public void A_film_that_never_dries_has_no_release() =>
        Should.Throw<ArgumentOutOfRangeException>(() => CoatVapour.FilmTime(Duration.Zero, Ratio.FromPercent(5)));

    [Fact]
    public void A_can_gives_off_all_its_solvents_and_propellant_at_once()
    {
        var label = PaintSamples.Label();

        var release = CoatVapour.Of(label, Mass.FromGrams(340), PaintSamples.Catalogue.Figures);

        // Volatile by its data sheet: 76 % of the contents are not solids.
        release.Solvents.Sum(part => part.Total.Grams).ShouldBe(0.76 * 340, 1e-6);
        release.Solvents.Single(part => part.Solvent.Name == "propane").FromFilm.Grams.ShouldBe(0, 1e-9);
        release.Solvents.Single(part => part.Solvent.Name == "acetone").AtOnce.Grams.ShouldBe(0.6 * 0.26 * 340, 1e-6);
        release.Solvents.Select(part => part.Solvent.Name).ShouldBeInOrder(SortDirection.Ascending, StringComparer.Ordinal);
    }

    [Fact]
    public void Water_is_no_vapour_to_fear() =>
        CoatVapour.Of(PaintSamples.Label("rust-converter"), Mass.FromGrams(100), PaintSamples.Catalogue.Figures).Solvents
            .ShouldHaveSingleItem().Solvent.Name.ShouldBe("2-butoxyethanol");

    [Fact]
    public void What_burns_counts_though_nobody_set_a_limit_to_breathing_it()
    {
        var xylene = PaintSamples.Catalogue.Solvent("xylene")!;
        var gas = xylene with { Legal = null, Recommended = null, Voc = false };
        var inert = gas with { Name = "inert", LowerExplosiveLimit = null };
        var label = PaintSamples.Label() with { Solvents = [new SolventContent(gas, Ratio.FromPercent(10)), new SolventContent(inert, Ratio.FromPercent(10))] };

        CoatVapour.Of(label, Mass.FromGrams(100), PaintSamples.Catalogue.Figures).Solvents.ShouldHaveSingleItem().Solvent.ShouldBe(gas);
    }
}
