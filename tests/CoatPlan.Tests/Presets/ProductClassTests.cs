using CoatPlan.Presets;

namespace CoatPlan.Tests.Presets;

public sealed class ProductClassTests
{
    private static readonly Catalogue Catalogue = BuiltInPresets.Read();

    public static TheoryData<string> Words => [.. Catalogue.Products.Select(product => product.Word)];

    // covers = net volume x solids by volume x share that lands on a flat panel / dry film
    [Theory]
    [MemberData(nameof(Words))]
    public void Net_contents_solids_film_and_coverage_agree_within_a_fifth(string word)
    {
        var product = Catalogue.Product(word);

        double computed = product.NetVolume.CubicMeters * product.SolidsByVolume.DecimalFractions
            * (1 - product.Method.Loss.DecimalFractions) / product.DryFilm.Meters;

        (product.Covers.SquareMeters / computed).ShouldBeInRange(0.8, 1.2);
    }

    [Theory]
    [MemberData(nameof(Words))]
    public void Solvents_and_solids_make_the_whole_can(string word)
    {
        var product = Catalogue.Product(word);

        (product.Solvents.Sum(content => content.Share.Percent) + product.SolidsByMass.Percent).ShouldBe(100, 1e-9);
    }

    // density = (1 - solids by volume) / sum of mass share / density of each solvent
    [Theory]
    [MemberData(nameof(Words))]
    public void The_density_follows_from_the_contents(string word)
    {
        var product = Catalogue.Product(word);

        double litresPerKilogram = product.Solvents.Sum(content => content.Share.DecimalFractions / content.Solvent.Density.KilogramsPerLiter);
        double computed = (1 - product.SolidsByVolume.DecimalFractions) / litresPerKilogram;

        (product.Density.KilogramsPerLiter / computed).ShouldBeInRange(0.95, 1.05);
    }

    // Resin alone is a little over 1, a filled primer 2, a film of zinc between 4 and 5.
    [Theory]
    [MemberData(nameof(Words))]
    public void The_dry_film_has_a_believable_density(string word)
    {
        var product = Catalogue.Product(word);

        double film = product.SolidsByMass.DecimalFractions * product.Density.KilogramsPerLiter / product.SolidsByVolume.DecimalFractions;

        if (product.Family == "zinc") film.ShouldBeInRange(4, 5);
        else film.ShouldBeInRange(1.05, 2.1);
    }

    [Theory]
    [MemberData(nameof(Words))]
    public void A_film_passes_its_stages_in_order(string word)
    {
        var times = Catalogue.Product(word).Times;

        times.Dust.ShouldBeLessThanOrEqualTo(times.Touch);
        times.Touch.ShouldBeLessThanOrEqualTo(times.Tape);
        times.Touch.ShouldBeLessThanOrEqualTo(times.Handle);
        times.Tape.ShouldBeLessThanOrEqualTo(times.Through);
        times.Handle.ShouldBeLessThanOrEqualTo(times.Through);
        times.Through.ShouldBeLessThanOrEqualTo(times.Service);
    }

    [Theory]
    [MemberData(nameof(Words))]
    public void Windows_are_apart_and_limits_hold_room_air(string word)
    {
        var product = Catalogue.Product(word);

        foreach (var windows in new[] { product.Recoat, product.Topcoat })
        {
            windows.ShouldNotBeEmpty();
            windows.Zip(windows.Skip(1)).ShouldAllBe(pair => pair.First.To < pair.Second.From);
        }

        product.Limits.AirLow.DegreesFahrenheit.ShouldBe(50, 1e-9);
        product.Limits.AirHigh.DegreesFahrenheit.ShouldBeInRange(90, 104.001);
        product.Limits.HumidityHigh.Percent.ShouldBeInRange(65, 85);
        product.HeatPeak.Kelvins.ShouldBeGreaterThanOrEqualTo(product.Heat.Kelvins);
    }

    [Theory]
    [MemberData(nameof(Words))]
    public void A_figure_that_was_moved_says_from_where_and_keeps_its_range(string word)
    {
        var product = Catalogue.Product(word);

        foreach (string field in product.Moved.Keys) product.Ranges.ShouldContainKey(field);
    }

    // Half solids by the wet film: an ordinary coat must not sag before the label's own film is reached.
    [Theory]
    [MemberData(nameof(Words))]
    public void An_ordinary_coat_holds_on_a_vertical_face(string word)
    {
        var product = Catalogue.Product(word);

        double litre = 1 / product.Density.KilogramsPerLiter;
        double gas = product.Solvents.Where(content => content.Solvent.Propellant)
            .Sum(content => content.Share.DecimalFractions / content.Solvent.Density.KilogramsPerLiter);
        double wet = product.DryFilm.Micrometers / (product.SolidsByVolume.DecimalFractions / (1 - (gas / litre)));

        product.HoldsOnVertical.Micrometers.ShouldBeInRange(wet, 3 * wet + 60);
    }

    [Fact]
    public void A_window_of_the_underhood_black_is_within_an_hour_or_after_two_days() =>
        Catalogue.Product("underhood-black-aerosol").Recoat.ShouldBe(
            [new(Duration.FromMinutes(10), Duration.FromHours(1)), new(Duration.FromHours(48), null)]);

    [Fact]
    public void Only_the_high_heat_class_is_cured_in_stages() =>
        Catalogue.Products.Where(product => !product.Cure.IsEmpty).Select(product => product.Word).ShouldBe(["high-heat-aerosol"]);

    [Fact]
    public void Isocyanate_stands_on_the_two_classes_that_hold_it() =>
        Catalogue.Products.Where(product => product.Hazards.Contains("isocyanate")).Select(product => product.Word)
            .ShouldBe(["moisture-cure-urethane", "urethane-2k-aerosol"]);
}
