using CoatPlan.Paint;
using CsCheck;

namespace CoatPlan.Tests.Paint;

public sealed class HidingByTheory
{
    [Fact]
    public void A_film_of_no_thickness_shows_its_ground_and_a_thick_one_itself()
    {
        var film = new OpaqueFilm(0.3);

        film.Over(0.6, 1e-9).ShouldBe(0.6, 1e-6);
        film.Over(0.6, 1e3).ShouldBe(0.3, 1e-9);
        film.Contrast(1e3).ShouldBe(1, 1e-9);
    }

    [Fact]
    public void The_power_of_a_film_gives_back_its_contrast() =>
        Gen.Select(Gen.Double[0.01, 0.95], Gen.Double[0.05, 0.97]).Sample((infinite, contrast) =>
        {
            var film = new OpaqueFilm(infinite);
            return Math.Abs(film.Contrast(film.PowerFor(contrast)) - contrast) < 1e-9;
        });

    [Fact]
    public void A_translucent_colour_takes_more_coats_than_an_opaque_one() =>
        Coats(below: 20, lightness: 90, contrast: 0.6).ShouldBeGreaterThan(Coats(below: 20, lightness: 90, contrast: 0.95));

    [Fact]
    public void Black_hides_in_fewer_coats_than_white_of_the_same_contrast() =>
        Coats(below: 50, lightness: 10, contrast: 0.8).ShouldBeLessThanOrEqualTo(Coats(below: 50, lightness: 95, contrast: 0.8));

    [Fact]
    public void The_same_colour_over_itself_is_hidden_at_once() =>
        Coats(below: 40, lightness: 40, contrast: 0.3).ShouldBe(1);

    [Theory]
    [InlineData(60, 40, 0.6)]
    [InlineData(20, 90, 0.7)]
    [InlineData(75, 30, 0.4)]
    public void Coats_go_on_until_nobody_sees_a_difference_and_no_longer(double below, double lightness, double contrast)
    {
        const double Seen = 1;
        var coats = Coats(below, lightness, contrast);

        coats.ShouldBeInRange(2, HidingCoats.NeverHides - 1);
        Hidden(coats).ShouldBeTrue();
        Hidden(coats - 1).ShouldBeFalse();

        bool Hidden(int count)
        {
            var film = new OpaqueFilm(CieLightness.Reflectance(lightness));
            var power = film.PowerFor(contrast) * count;
            var left = CieLightness.Of(film.Over(CieLightness.Reflectance(below), power)) - lightness;
            return film.Contrast(power) >= 0.98 || Math.Abs(left) < Seen;
        }
    }

    [Fact]
    public void A_darker_primer_under_a_dark_colour_never_asks_more_coats() =>
        Gen.Select(Gen.Double[5, 30], Gen.Double[0, 65], Gen.Double[0, 5], Gen.Double[0.2, 0.97]).Sample((lightness, above, darker, contrast) =>
        {
            var primer = lightness + above;
            var shade = Math.Max(lightness, primer - darker);
            return Coats(shade, lightness, contrast) <= Coats(primer, lightness, contrast);
        });

    [Fact]
    public void Lightness_and_reflectance_undo_each_other()
    {
        for (var lightness = 0.0; lightness <= 100; lightness += 2.5)
            CieLightness.Of(CieLightness.Reflectance(lightness)).ShouldBe(lightness, 1e-9);
        CieLightness.Reflectance(100).ShouldBe(1, 1e-12);
        CieLightness.Reflectance(50).ShouldBe(0.1842, 1e-4);
    }

    private static int Coats(double below, double lightness, double contrast) => HidingCoats.Over(below, lightness, contrast, 0.98, 1);
}
