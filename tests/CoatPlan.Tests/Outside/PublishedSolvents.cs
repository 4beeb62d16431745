using CoatPlan.Presets;

namespace CoatPlan.Tests.Outside;

/// <summary>Limits and properties of solvents against Data/check-values: solvents.csv, flammable-limits.csv.</summary>
public sealed class PublishedSolvents
{
    private static readonly Catalogue Catalogue = BuiltInPresets.Read();

    public static TheoryData<string> Names => [.. CheckValues.Rows("solvents.csv").Select(row => row["name"])];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_solvent_has_its_gathered_properties_and_limits(string name)
    {
        var row = CheckValues.Rows("solvents.csv").Single(candidate => candidate["name"] == name);
        var ours = Catalogue.Solvent(name).ShouldNotBeNull();

        ours.Cas.ShouldBe(row["cas"]);
        ours.MolarMass.GramsPerMole.ShouldBe(row.Number("molarMassGPerMol"), 1e-9);
        ours.Density.GramsPerMilliliter.ShouldBe(row.Number("densityGPerMl"), 1e-9);
        Compare(ours.Legal, row, "oshaPelPpm", "pelStatus");
        Compare(ours.Idlh, row, "idlhPpm", "idlhStatus");
        if (row.Maybe("nioshRelPpm") is not null) Compare(ours.Recommended, row, "nioshRelPpm", "relStatus");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_explosive_limit_is_the_lowest_of_the_lists_or_more_careful(string name)
    {
        var ours = Catalogue.Solvent(name).ShouldNotBeNull();
        double[] listed =
        [
            .. CheckValues.Rows("flammable-limits.csv").Where(row => row["name"] == name).Select(row => row.Number("lelPercent")),
            CheckValues.Rows("solvents.csv").Single(row => row["name"] == name).Number("lelPercent"),
        ];
        double limit = ours.LowerExplosiveLimit.ShouldNotBeNull().Share.Percent;

        limit.ShouldBeLessThanOrEqualTo(listed.Min() + 1e-9);
        ours.LowerExplosiveLimitSource.ShouldNotBeEmpty();
        // Two are taken from a list that is remembered only, because it is the more careful one.
        if (name is not ("methanol" or "isobutane")) limit.ShouldBe(listed.Min(), 1e-9);
    }

    [Fact]
    public void Short_term_and_ceiling_limits_are_those_that_were_published()
    {
        Ppm(Catalogue.Solvent("toluene")!.Ceiling).ShouldBe(300, 1e-6);
        (string Name, double Ppm)[] shortTerm =
        [
            ("toluene", 150), ("xylene", 150), ("ethylbenzene", 125), ("methyl ethyl ketone", 300), ("n-butyl acetate", 200), ("isopropanol", 500),
        ];
        foreach (var (name, ppm) in shortTerm) Ppm(Catalogue.Solvent(name)!.ShortTerm).ShouldBe(ppm, 1e-6, name);
    }

    // The pair 500 ppm = 2900 mg/m3 of the legal limit fixes the molar mass of mineral spirits; 350 mg/m3 then is 60 ppm.
    [Fact]
    public void A_limit_by_mass_becomes_one_by_volume() =>
        Ppm(Catalogue.Solvent("mineral spirits")!.Recommended).ShouldBe(350 * 24.45 / 142, 1e-6);

    [Fact]
    public void The_lower_of_two_limits_is_the_one_that_counts() => Ppm(Catalogue.Solvent("acetone")!.LowestLongTerm).ShouldBe(250, 1e-6);

    private static double Ppm(ExposureLimit? limit) => limit.ShouldNotBeNull().Share.PartsPerMillion;

    private static void Compare(ExposureLimit? limit, CheckRow row, string field, string statusField)
    {
        if (row.Maybe(field) is not { } ppm)
        {
            // An IDLH by mass is in the table's note only.
            if (field != "idlhPpm") limit.ShouldBeNull(row["name"] + " " + field);
            return;
        }

        Ppm(limit).ShouldBe(ppm, 1e-6, row["name"] + " " + field);
        limit!.Status.ShouldBe(
            row[statusField] switch { "published" => Status.Published, "from memory" => Status.FromMemory, _ => Status.SecondHand },
            row["name"] + " " + field);
    }
}
