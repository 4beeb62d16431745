using CoatPlan.Presets;

namespace CoatPlan.Tests.Presets;

public sealed class OverrideTests
{
    [Fact]
    public void A_user_changes_single_fields_of_a_row()
    {
        var catalogue = Read(
            """
            products:
              underhood-black-aerosol:
                covers: 16 ft2
                times: {tape: 2 h}
            """);
        var usual = BuiltInPresets.Read().Product("underhood-black-aerosol");
        var changed = catalogue.Product("underhood-black-aerosol");

        changed.Covers.SquareFeet.ShouldBe(16, 1e-9);
        changed.Times.ShouldBe(usual.Times with { Tape = Duration.FromHours(2) });
        changed.DryFilm.ShouldBe(usual.DryFilm);
        changed.Provenance.Source.ShouldEndWith("; changed in shop.yaml");
        changed.Provenance.Status.ShouldBe(Status.FromMemory);
        catalogue.Products.Length.ShouldBe(18);
    }

    [Fact]
    public void A_change_with_its_own_source_is_vouched_for_by_it()
    {
        var catalogue = Read(
            """
            sources: {gauge: measured in the shop}
            materials:
              steel: {gauge: 0.9 mm, source: gauge, status: published}
            """);

        catalogue.Material("steel").Gauge.Millimeters.ShouldBe(0.9, 1e-9);
        catalogue.Material("steel").Provenance.ShouldBe(new("measured in the shop", Status.Published));
    }

    [Fact]
    public void A_list_of_solvents_is_replaced_whole()
    {
        var catalogue = Read("products: {clear-aerosol: {solvents: {acetone: 40 %, propane: 20 %}}}");

        catalogue.Product("clear-aerosol").Solvents.Select(content => content.Solvent.Name).ShouldBe(["acetone", "propane"]);
    }

    [Fact]
    public void A_user_adds_rows_and_uses_them()
    {
        var catalogue = Read(
            """
            solvents:
              limonene: {cas: 5989-27-5, molar-mass: 136.2 g/mol, density: 0.84 kg/L, boiling: 176 °C, lel: 0.7 %; estimate; own, source: a data sheet, status: estimate}
            products:
              clear-aerosol: {solvents: {limonene: 30 %}}
            """);

        var content = catalogue.Product("clear-aerosol").Solvents.ShouldHaveSingleItem();
        content.Solvent.Cas.ShouldBe("5989-27-5");
        catalogue.Solvents.Length.ShouldBe(BuiltInPresets.Read().Solvents.Length + 1);
    }

    [Fact]
    public void A_single_verdict_is_changed_by_the_names_of_its_pair()
    {
        var catalogue = Read("compatibility: {on-material: {rows: {zinc-rich-aerosol: {cast iron: yes V}}}}");

        catalogue.Compatibility.OnMaterial("zinc-rich-aerosol", "cast iron").Verdict.ShouldBe(Verdict.Yes);
        catalogue.Compatibility.OnMaterial("zinc-rich-aerosol", "aluminium").Verdict.ShouldBe(Verdict.No);
    }

    [Fact]
    public void The_later_of_two_files_wins()
    {
        PresetText[] files = [new("a.yaml", "figures: {wind-limit: {speed: 8 mph}}"), new("b.yaml", "figures: {wind-limit: {speed: 6 mph}}")];

        var reading = CatalogueReader.Read(BuiltInPresets.Texts, files);

        reading.Problems.ShouldBeEmpty();
        reading.Catalogue!.Figures.Speed("wind-limit").MilesPerHour.ShouldBe(6, 1e-9);
        reading.Catalogue.Figures.Row("wind-limit").Provenance.Source.ShouldBe("usual in the trade; changed in a.yaml; changed in b.yaml");
    }

    [Fact]
    public void A_new_condition_is_a_word_that_a_job_may_use()
    {
        var catalogue = Read("conditions: {salt: {title: road salt, bare-share: 0.2, asks: [wash], source: own, status: estimate}}");

        catalogue.Vocabulary.Conditions.ShouldContain("salt");
    }

    [Fact]
    public void A_shop_prices_what_is_used_up_and_calls_it_by_its_own_name()
    {
        var catalogue = Read("consumables: {tape: {price: 6.40, pack: 3, also: [green tape]}}");

        var tape = catalogue.Consumable("tape");
        (tape.Price, tape.Pack).ShouldBe((6.40m, 3));
        tape.IsCalled("Green-tapes").ShouldBeTrue();
        catalogue.Consumable("cup").Price.ShouldBeNull();
    }

    [Fact]
    public void Nothing_to_override_changes_nothing() =>
        CatalogueReader.Read(BuiltInPresets.Texts, []).Catalogue!.Materials.Length.ShouldBe(BuiltInPresets.Read().Materials.Length);

    private static Catalogue Read(string text)
    {
        var reading = CatalogueReader.Read(BuiltInPresets.Texts, [new("shop.yaml", text)]);
        reading.Problems.ShouldBeEmpty();
        return reading.Catalogue!;
    }
}
