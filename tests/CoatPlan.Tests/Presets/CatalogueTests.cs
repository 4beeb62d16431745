using CoatPlan.Presets;

namespace CoatPlan.Tests.Presets;

public sealed class CatalogueTests
{
    private static readonly Catalogue Catalogue = BuiltInPresets.Read();

    [Fact]
    public void Every_row_names_its_source()
    {
        Provenance[] all =
        [
            .. Catalogue.Materials.Select(row => row.Provenance), .. Catalogue.Finishes.Select(row => row.Provenance),
            .. Catalogue.Conditions.Select(row => row.Provenance), .. Catalogue.Forms.Select(row => row.Provenance),
            .. Catalogue.Reaches.Select(row => row.Provenance), .. Catalogue.Methods.Select(row => row.Provenance),
            .. Catalogue.Operations.Select(row => row.Provenance),
            .. Catalogue.Operations.SelectMany(row => row.Rates).Select(rate => rate.Provenance),
            .. Catalogue.Products.Select(row => row.Provenance), .. Catalogue.Solvents.Select(row => row.Provenance),
            .. Catalogue.Compatibility.Reasons.Values.Select(row => row.Provenance), .. Catalogue.Pieces.Select(row => row.Provenance),
            .. Catalogue.Consumables.Select(row => row.Provenance), .. Catalogue.Tapes.Select(row => row.Provenance),
            .. Catalogue.Abrasives.Select(row => row.Provenance), .. Catalogue.GritTasks.Select(row => row.Provenance),
            .. Catalogue.Respirators.Select(row => row.Provenance), .. Catalogue.ServiceHeats.Select(row => row.Provenance),
            .. Catalogue.MaskKinds.Select(row => row.Provenance), .. Catalogue.Neighbours.Select(row => row.Provenance),
            .. Catalogue.Hazards.Select(row => row.Provenance), .. Catalogue.LightnessWords.Select(row => row.Provenance),
            .. Catalogue.HidingWords.Select(row => row.Provenance), .. Catalogue.Figures.All.Values.Select(row => row.Provenance),
            Catalogue.Film.Provenance,
        ];

        all.Length.ShouldBeGreaterThan(300);
        all.ShouldAllBe(provenance => provenance.Source.Length > 2);
    }

    [Fact]
    public void Forms_need_the_paint_that_misses_them()
    {
        Catalogue.Form("panel").PaintFactor.ShouldBe(1, 1e-12);
        Catalogue.Form("casting").PaintFactor.ShouldBe(65 / 55.0, 1e-12);
        Catalogue.Form("bracket").PaintFactor.ShouldBe(65 / 45.0, 1e-12);
        Catalogue.Form("tube").PaintFactor.ShouldBe(65 / 40.0, 1e-12);
    }

    [Fact]
    public void A_casting_has_relief_whatever_its_form_is_called()
    {
        Catalogue.Relief("steel", "panel").ShouldBe(1);
        Catalogue.Relief("cast iron", "panel").ShouldBe(1.35);
        Catalogue.Relief("steel", "casting").ShouldBe(1.35);
    }

    [Fact]
    public void Operations_stand_in_the_order_of_a_job_each_place_taken_once()
    {
        Catalogue.Operations.Select(operation => operation.Order).ShouldBe(Catalogue.Operations.Select(operation => operation.Order).Order().Distinct());
        Catalogue.Operation("solvent-clean").Order.ShouldBeLessThan(Catalogue.Operation("derust").Order);
        Catalogue.Operation("cap-ports").Order.ShouldBeLessThan(Catalogue.Operation("derust").Order);
        Catalogue.Operation("final-wipe").Order.ShouldBeLessThan(Catalogue.Operation("tack").Order);
        Catalogue.Operation("tack").Order.ShouldBeLessThan(Catalogue.Operation("coat").Order);
        Catalogue.Operation("coat").Breakable.ShouldBeFalse();
    }

    [Fact]
    public void Greasy_work_and_scaly_rust_take_the_slower_rate()
    {
        Catalogue.Operation("degrease").RateFor(["sound"]).MinutesPerSquareMetre.ShouldBe(4.3);
        Catalogue.Operation("degrease").RateFor(["oily"]).MinutesPerSquareMetre.ShouldBe(16);
        Catalogue.Operation("derust").RateFor(["light rust", "scaly rust"]).Name.ShouldBe("wheel-heavy");
    }

    // tau = density x specific heat x gauge / coefficient, minutes; facts of the materials table.
    [Theory]
    [InlineData("steel", 0.8, 6.5)]
    [InlineData("cast iron", 6, 47)]
    [InlineData("cast aluminium", 5, 27)]
    [InlineData("polyolefin", 2.5, 9.6)]
    public void Metal_lags_the_air_by_its_thickness(string word, double millimetres, double minutes)
    {
        var material = Catalogue.Material(word);

        double heat = material.Density.KilogramsPerCubicMeter * material.SpecificHeat.JoulesPerKilogramKelvin * millimetres / 1000;

        (heat / Catalogue.Film.Indoors.WattsPerSquareMeterKelvin / 60).ShouldBe(minutes, 0.5);
    }

    [Fact]
    public void Twenty_usual_pieces_are_there_and_paint_what_they_say()
    {
        Catalogue.Pieces.Length.ShouldBeGreaterThanOrEqualTo(20);
        foreach (var piece in Catalogue.Pieces)
        {
            double painted = double.Parse(piece.Painted.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
            (piece.Outline.SquareFeet * piece.Relief / painted).ShouldBeInRange(0.95, 1.05, piece.Name);
        }
    }

    [Fact]
    public void A_half_mask_counts_ten_and_supplied_air_is_known_as_such()
    {
        Catalogue.Respirator("air-purifying").Factors["half"].ShouldBe(10);
        Catalogue.Respirator("supplied-continuous").SuppliesAir.ShouldBeTrue();
        Catalogue.Hazard("isocyanate").Respirator.ShouldBe("supplied-continuous");
        foreach (var hazard in Catalogue.Hazards.Where(hazard => hazard.Respirator.Length > 0)) Catalogue.Respirator(hazard.Respirator);
    }

    [Fact]
    public void Rates_that_masked_things_name_exist()
    {
        foreach (var kind in Catalogue.MaskKinds) Catalogue.Operation("mask").Rate(kind.Rate);
    }

    [Fact]
    public void A_word_that_is_not_there_is_the_callers_mistake()
    {
        Should.Throw<ArgumentException>(() => Catalogue.Material("tin")).Message.ShouldContain("tin");
        Should.Throw<ArgumentException>(() => Catalogue.Figures.Time("tea"));
        Should.Throw<ArgumentException>(() => Catalogue.Figures.Time("wind-limit"));
        Should.Throw<ArgumentException>(() => Catalogue.Operation("coat").Rate("roller"));
        Catalogue.Solvent("holy water").ShouldBeNull();
    }
}
