using CoatPlan.Air;
using CoatPlan.Presets;
using CoatPlan.Vapour;
using UnitsNet;

namespace CoatPlan.Tests.Outside;

/// <summary>
/// Worked examples of 29 CFR 1910.1000 and 1910.94, limit pairs of the NIOSH IDLH documentation and one of an open-source package's manual. Source of each
/// row: exposure.csv.
/// </summary>
public sealed class PublishedExposure
{
    private static readonly ImmutableArray<CheckRow> Rows = CheckValues.Rows("exposure.csv");
    private static readonly ImmutableArray<CheckRow> Solvents = CheckValues.Rows("solvents.csv");

    [Fact]
    public void A_mixture_of_three_is_under_its_limit()
    {
        var row = Case("mixture ratio, acceptable").Single();

        Ratios.Mixture(row.Named("inputs", "ppm").Zip(row.Named("inputs", "limitPpm"))).ShouldBe(row.Number("expected"), row.Number("tolerance"));
    }

    [Fact]
    public void The_maximum_use_concentration_stops_at_the_dangerous_one()
    {
        var row = Case("maximum use concentration capped by IDLH").Single();

        var use = Ratios.MaximumUse((int)One(row, "assignedProtectionFactor"), Ppm(One(row, "pelPpm")), Ppm(One(row, "idlhPpm")));

        use.PartsPerMillion.ShouldBe(row.Number("expected"), 1e-9);
        Ratios.MaximumUse(10, Ppm(100), idlh: null).PartsPerMillion.ShouldBe(1000, 1e-9);
    }

    [Fact]
    public void The_dilution_of_toluene_agrees_with_the_rule()
    {
        var row = Case("dilution volume for 25 % of LEL").Single();

        Ratios.DilutionPerLiquid(One(row, "vapourFt3PerGal"), Ratio.FromPercent(One(row, "lelPercent")), Ratio.FromPercent(25))
            .ShouldBe(row.Number("expected"), row.Number("tolerance"));
    }

    [Fact]
    public void What_is_immediately_dangerous_stops_at_a_tenth_of_the_explosive_limit()
    {
        var rows = Case("IDLH from LEL");

        rows.Length.ShouldBe(4);
        foreach (var row in rows)
        {
            (One(row, "lelPercent") / 100 * 0.10 * 1e6).ShouldBe(row.Number("expected"), 1e-6);
            BuiltInPresets.Read().Solvent(row.Word("inputs", "name"))!.Idlh!.Share.PartsPerMillion.ShouldBe(row.Number("expected"), 1e-6, row.Word("inputs", "name"));
        }
    }

    [Fact]
    public void A_hundredth_of_a_tank_of_vapour_is_one_per_cent_of_its_air()
    {
        var rows = Case("vapour that makes 1 % of a tank");
        var toluene = BuiltInPresets.Read().Solvent("toluene")!;

        rows.Length.ShouldBe(4);
        foreach (var row in rows)
        {
            var mass = Mass.FromGrams(Volume.FromCubicFeet(row.Number("expected")).Liters / Concentration.MolarVolumeLitres * toluene.MolarMass.GramsPerMole);

            Concentration.In(mass, toluene, Volume.FromUsGallons(One(row, "tankUsGal"))).Percent.ShouldBe(1, row.Number("tolerance") / row.Number("expected"));
        }
    }

    [Fact]
    public void Limit_pairs_agree_between_ppm_and_milligrams()
    {
        var rows = Case("ppm to mg/m3");

        rows.Length.ShouldBe(9);
        foreach (var row in rows)
        {
            var molarMass = MolarMass.FromGramsPerMole(Solvents.Single(solvent => solvent["name"] == row.Word("inputs", "name")).Number("molarMassGPerMol"));

            Concentration.MassOf(Ppm(One(row, "ppm")), molarMass).MilligramsPerCubicMeter
                .ShouldBe(row.Number("expected"), row.Number("tolerance"), row.Word("inputs", "name"));
        }
    }

    [Fact]
    public void A_large_room_builds_up_as_printed()
    {
        var row = Case("build-up in a well-mixed room").Single();
        var minutes = (int)One(row, "minutes");
        var perMinute = One(row, "vapourFt3PerMin") / One(row, "roomFt3");
        var air = new RoomAir(One(row, "airFt3PerMin") / One(row, "roomFt3"), [new RoomSource(0, minutes, 1, [perMinute * minutes], [0])], 1);

        while (air.Now < minutes)
            air.Step();

        (air.Levels[0] * 1e6).ShouldBe(row.Number("expected"), row.Number("tolerance"));
    }

    [Fact]
    public void Vapour_volumes_agree_with_the_remembered_table_within_five_percent()
    {
        var compared = 0;
        foreach (var row in Solvents)
        {
            // The remembered figures of two mixtures are no check: their molar mass depends on the cut.
            if (row.Maybe("vapourFt3PerUsGal") is not { } printed || row["name"].StartsWith("mineral", StringComparison.Ordinal)
                || row["name"].StartsWith("VM&P", StringComparison.Ordinal))
                continue;
            var gallon = Volume.FromUsGallons(1);
            var vapour = Concentration.VapourOf(
                gallon * Density.FromGramsPerMilliliter(row.Number("densityGPerMl")), MolarMass.FromGramsPerMole(row.Number("molarMassGPerMol")));

            // The table holds at 70 °F, the library's figure at 25 °C.
            (vapour.CubicFeet * 294.26 / 298.15).ShouldBe(printed, 0.05 * printed, row["name"]);
            compared++;
        }

        compared.ShouldBe(10);
    }

    private static ImmutableArray<CheckRow> Case(string name) => [.. Rows.Where(row => row["case"] == name)];

    private static double One(CheckRow row, string name) => row.Named("inputs", name)[0];

    private static Ratio Ppm(double ppm) => Ratio.FromPartsPerMillion(ppm);
}
