using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Tests.Presets;

public sealed class LabelTests
{
    private static readonly Catalogue Catalogue = BuiltInPresets.Read();

    [Fact]
    public void A_preset_alone_fills_a_whole_label()
    {
        var label = Only(new() { Key = "black", Preset = "underhood-black-aerosol" });

        label.Name.ShouldBe("Underhood black, aerosol");
        label.NetMass!.Value.Ounces.ShouldBe(12, 1e-9);
        label.NetVolume!.Value.Milliliters.ShouldBe(430, 1);
        label.Covers!.Value.SquareFeet.ShouldBe(13, 1e-9);
        label.Loss.Percent.ShouldBe(35, 1e-9);
        label.Times.Dust.ShouldBe(Duration.FromMinutes(25));
        label.Times.Tape.ShouldBe(Duration.FromMinutes(90));
        label.Recoat.ShouldBe([Window(10, 60), Window(24 * 60 * 2, null)]);
        label.Limits.HumidityHigh.Percent.ShouldBe(65, 1e-9);
        label.Limits.AboveDew.Kelvins.ShouldBe(3, 1e-9);
        label.Origins["covers"].ShouldBe(Origin.Preset);
        label.Origins["loss"].ShouldBe(Origin.Default);
        label.CoatsUsual.ShouldBe(2);
    }

    [Fact]
    public void What_the_job_says_wins_field_by_field()
    {
        var label = Only(new()
        {
            Key = "black",
            Preset = "underhood-black-aerosol",
            Label = new()
            {
                Name = "Satin black",
                Covers = Area.FromSquareFeet(15),
                Times = new() { Touch = Duration.FromMinutes(40) },
                Recoat = [new(null, Duration.FromHours(1), FromTouch: true), new(Duration.FromHours(24), null, false)],
                Limits = new() { Humidity = new(null, Ratio.FromPercent(80)) },
            },
        });

        label.Name.ShouldBe("Satin black");
        label.Covers!.Value.SquareFeet.ShouldBe(15, 1e-9);
        label.NetMass!.Value.Ounces.ShouldBe(12, 1e-9);
        label.Times.Touch.ShouldBe(Duration.FromMinutes(40));
        label.Times.Dust.ShouldBe(Duration.FromMinutes(40));
        label.Times.Handle.ShouldBe(Duration.FromHours(3));
        label.Recoat.ShouldBe([Window(40, 60), Window(24 * 60, null)]);
        label.Topcoat.ShouldBe([Window(48 * 60, null)]);
        label.Limits.HumidityHigh.Percent.ShouldBe(80, 1e-9);
        label.Limits.AirLow.DegreesFahrenheit.ShouldBe(50, 1e-9);
        label.Origins["times.touch"].ShouldBe(Origin.Job);
        label.Origins["times.handle"].ShouldBe(Origin.Preset);
    }

    [Fact]
    public void A_window_that_closes_before_the_coat_can_be_touched_gives_way_to_the_next()
    {
        var label = Only(new()
        {
            Key = "slow",
            Preset = "enamel-aerosol",
            Label = new()
            {
                Times = new() { Touch = Duration.FromHours(2) },
                Recoat = [new(null, Duration.FromHours(1), FromTouch: true), new(Duration.FromHours(24), null, false)],
            },
        });

        label.Recoat.ShouldBe([Window(24 * 60, null)]);
    }

    [Fact]
    public void A_product_without_a_preset_takes_the_contracts_defaults()
    {
        var label = Only(new()
        {
            Key = "own",
            Label = Bare() with { Covers = Area.FromSquareFeet(12), Density = Density.FromKilogramsPerLiter(0.8), Package = new() { NetMass = Mass.FromGrams(320) } },
        });

        label.Preset.ShouldBeNull();
        label.Name.ShouldBe("own");
        label.NetVolume!.Value.Milliliters.ShouldBe(400, 1e-6);
        label.Pack.ShouldBe(1);
        label.Topcoat.ShouldBe(label.Recoat);
        label.Missed.ShouldBe(MissedRework.Scuff);
        label.Limits.AboveDew.Kelvins.ShouldBe(3, 1e-9);
        label.Times.Tape.ShouldBe(label.Times.Handle);
        label.Times.Service.ShouldBe(label.Times.Through);
        label.AtAir.DegreesFahrenheit.ShouldBe(70, 1e-9);
        label.CoatsUsual.ShouldBe(2);
        Catalogue.Compatibility.OnMaterial(label.Preset, "steel").Verdict.ShouldBe(Verdict.Unknown);
    }

    [Fact]
    public void A_product_without_a_preset_must_say_how_it_covers_dries_and_where_it_may_be_used()
    {
        var reading = Labels.Resolve(JobOf(new JobProduct { Key = "own", Mark = new(7, 3) }), Catalogue, "a.job.yaml");

        reading.Labels.ShouldBeNull();
        reading.Problems.Length.ShouldBe(4);
        reading.Problems.ShouldAllBe(problem => problem.Code == "missing-key" && problem.Line == 7 && problem.File == "a.job.yaml");
    }

    [Fact]
    public void Paint_that_is_counted_by_solids_needs_its_film_and_the_volume_of_its_package()
    {
        var reading = Labels.Resolve(JobOf(new JobProduct { Key = "own", Label = Bare() with { Solids = Ratio.FromPercent(40) } }), Catalogue);

        reading.Problems.Select(problem => problem.Message).ShouldBe(
            ["`dry-film` is missing in product `own`", "`package` is missing in product `own`"]);
    }

    [Fact]
    public void An_unknown_preset_and_an_unknown_solvent_are_told_together()
    {
        var job = JobOf(
            new JobProduct { Key = "a", Preset = "enamel-aerosl", Mark = new(3, 1) },
            new JobProduct
            {
                Key = "b",
                Preset = "clear-aerosol",
                Label = new() { Solvents = [new() { Name = "tolueen", Share = Ratio.FromPercent(10), Mark = new(9, 5) }] },
            });

        var problems = Labels.Resolve(job, Catalogue).Problems;

        problems.Length.ShouldBe(2);
        problems[0].Mend.ShouldBe("`enamel-aerosol`");
        problems[1].Mend.ShouldBe("`toluene`");
        problems[1].Column.ShouldBe(5);
    }

    [Theory]
    [InlineData("108-88-3")]
    [InlineData("Toluene")]
    [InlineData("toluol")]
    public void A_solvent_is_known_by_name_alias_and_cas_number(string name)
    {
        var label = Only(new()
        {
            Key = "b",
            Preset = "clear-aerosol",
            Label = new() { Solvents = [new() { Name = name, Share = Ratio.FromPercent(10) }] },
        });

        label.Solvents.ShouldHaveSingleItem().Solvent.Name.ShouldBe("toluene");
    }

    [Fact]
    public void A_row_of_the_labels_own_table_fills_its_gaps_in_proportion()
    {
        var label = Only(new()
        {
            Key = "black",
            Preset = "underhood-black-aerosol",
            Label = new()
            {
                TimesAt =
                [
                    new() { Air = Temperature.FromDegreesFahrenheit(90), Times = new() { Touch = Duration.FromMinutes(10) } },
                    new() { Air = Temperature.FromDegreesFahrenheit(50), Times = new() { Touch = Duration.FromMinutes(50), Handle = Duration.FromHours(6) } },
                ],
            },
        });

        label.TimesAt.Select(row => row.Air.DegreesFahrenheit).ShouldBe([50, 90], 1e-9);
        label.TimesAt[0].Times.Handle.ShouldBe(Duration.FromHours(6));
        label.TimesAt[0].Times.Through.ShouldBe(Duration.FromHours(48));
        label.TimesAt[1].Times.Through.ShouldBe(Duration.FromHours(24), "a warm row promises less only for the stages that it names");
    }

    [Fact]
    public void The_method_of_the_job_brings_its_own_loss()
    {
        var label = Only(new() { Key = "c", Preset = "rust-converter", Label = new() { Method = ApplicationMethod.SprayGun } });

        label.Method.Word.ShouldBe("spray gun");
        label.Loss.Percent.ShouldBe(45, 1e-9);
    }

    private static CoatWindow Window(double from, double? to) =>
        new(Duration.FromMinutes(from), to is { } end ? Duration.FromMinutes(end) : null);

    private static ProductLabel Bare() => new()
    {
        Times = new() { Touch = Duration.FromMinutes(20), Handle = Duration.FromHours(2), Through = Duration.FromHours(24) },
        Recoat = [new(Duration.FromMinutes(10), Duration.FromHours(1), false)],
        Limits = new() { Air = new(Temperature.FromDegreesFahrenheit(50), Temperature.FromDegreesFahrenheit(90)) },
    };

    private static Label Only(JobProduct product)
    {
        var reading = Labels.Resolve(JobOf(product), Catalogue);
        reading.Problems.ShouldBeEmpty();
        return reading.Labels![product.Key];
    }

    private static Job JobOf(params JobProduct[] products) => new()
    {
        Name = "test",
        Start = new LocalDateTime(2027, 5, 14, 8, 0),
        Place = null!,
        Crew = null!,
        Products = [.. products],
    };
}
