using CoatPlan.Jobs;
using CoatPlan.Prep;
using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Tests.Prep;

public class WarningCodes
{
    private static readonly string[] Contract =
    [
        "not-on-material", "not-over-finish", "lifts-coat-below", "too-hot", "needs-primer", "no-primer-wanted", "gloss-under-rust-bonding",
        "lead-suspected", "asbestos-suspected", "isocyanate-air", "brake-fluid", "too-few-coats", "past-label-coats", "too-thick-on-vertical",
        "mask-not-paint", "heat-transfer", "over-limit", "over-lel", "over-idlh", "ignition", "refrigerant", "fuel", "airbag", "test-patch",
        "spot-prime", "data-missing", "deadline", "check-failed",
    ];

    private static readonly Dictionary<string, (Job Raises, Job Not)> Cases = new()
    {
        ["not-on-material"] = (One(system: "clear-aerosol"), One()),
        ["not-over-finish"] = (One(finish: "factory paint"), One(finish: "factory paint", system: PrepJob.Enamel)),
        ["lifts-coat-below"] = (One(system: "enamel-aerosol+lacquer-aerosol"), One(system: "epoxy-primer-2k-aerosol+lacquer-aerosol")),
        ["too-hot"] = (Hot(300), Hot(150)),
        ["needs-primer"] = (One("aluminium", system: PrepJob.Enamel), One("aluminium")),
        ["no-primer-wanted"] = (One(system: "etch-primer-aerosol+high-heat-aerosol"), One(system: "high-heat-aerosol")),
        ["gloss-under-rust-bonding"] = (One(finish: "powder coat", system: "moisture-cure-urethane"), One(system: "moisture-cure-urethane")),
        ["lead-suspected"] = (One(finish: "unknown", system: PrepJob.Enamel), One(finish: "factory paint", system: PrepJob.Enamel)),
        ["asbestos-suspected"] = (Named("Brake backing plate"), Named("Brake line guard")),
        ["isocyanate-air"] = (One(system: "epoxy-primer-2k-aerosol+urethane-2k-aerosol"), One(system: "epoxy-primer-2k-aerosol")),
        ["brake-fluid"] = (Near("brake reservoir", PrepJob.EtchAndEnamel), Near("brake reservoir", "epoxy-primer-2k-aerosol+urethane-2k-aerosol")),
        ["mask-not-paint"] = (One("rubber", system: PrepJob.Enamel), One()),
        ["heat-transfer"] = (Named("Radiator core"), Named("Radiator support")),
        ["ignition"] = (Ignited("gas water heater"), One()),
        ["refrigerant"] = (Near("air-conditioning line"), Near("fuel line")),
        ["fuel"] = (Near("fuel line"), Near("airbag")),
        ["airbag"] = (Near("airbag"), Near("fuel line")),
        ["test-patch"] = (One(finish: "repaint", system: PrepJob.Enamel), One(finish: "factory paint", system: PrepJob.Enamel)),
        ["spot-prime"] =
            (Spots(PrepJob.Enamel), Spots(PrepJob.EtchSpotsAndEnamel)),
        ["data-missing"] = (Near("hot part"), Hot(150)),
        ["check-failed"] = (Checked(132, 131, 90, 133), Checked(132, 131, 130, 133)),
    };

    public static TheoryData<string> Raised => [.. Cases.Keys.Order()];

    [Theory]
    [MemberData(nameof(Raised))]
    public void Each_code_is_raised_by_what_it_is_for_and_not_without_it(string code)
    {
        PrepJob.Sequence(Cases[code].Raises).Codes().ShouldContain(code);
        PrepJob.Sequence(Cases[code].Not).Codes().ShouldNotContain(code);
    }

    [Fact]
    public void Every_code_of_the_contract_has_a_text_and_no_other_code_has_one() =>
        WarningTexts.Standard.Codes.Order().ShouldBe(Contract.Order());

    [Theory]
    [MemberData(nameof(Raised))]
    public void No_warning_calls_anything_safe_or_leaves_a_name_in_braces(string code)
    {
        foreach (var warning in PrepJob.Sequence(Cases[code].Raises).Warnings)
        {
            warning.Text.ShouldNotContain(" safe ");
            warning.Text.ShouldNotContain("{");
            warning.Text.ShouldContain(". ");
        }
    }

    [Theory]
    [InlineData("factory paint", 1974, true)]
    [InlineData("factory paint", 1990, false)]
    [InlineData("repaint", 2015, true)]
    [InlineData("bare", 1974, false)]
    public void Lead_is_suspected_by_finish_and_year(string finish, int built, bool suspected) =>
        PrepJob.Sequence(One(finish: finish) with { Built = built }).Codes().Contains("lead-suspected").ShouldBe(suspected);

    [Theory]
    [InlineData(LeadTestResult.Negative, false)]
    [InlineData(LeadTestResult.Positive, true)]
    public void A_test_for_lead_beats_suspicion(LeadTestResult test, bool warned) =>
        PrepJob.Sequence(PrepJob.Of(PrepJob.Surface(finish: "unknown") with { LeadTest = test })).Codes().Contains("lead-suspected").ShouldBe(warned);

    [Fact]
    public void A_leak_and_a_test_below_the_caps_rating_fail_the_check()
    {
        PrepJob.Sequence(Held(15, 15, 11)).Warnings.Single(warning => warning.Code == "check-failed").Text.ShouldContain("leak");
        PrepJob.Sequence(Held(15, 10, 10)).Warnings.Single(warning => warning.Code == "check-failed").Text.ShouldContain("own rating");
        PrepJob.Sequence(Held(15, 15, 15)).Codes().ShouldNotContain("check-failed");
    }

    [Fact]
    public void A_failed_check_still_gives_the_whole_sequence() =>
        PrepJob.Sequence(Checked(132, 90)).Words().ShouldContain("final-wipe");

    [Fact]
    public void An_open_heater_is_an_ignition_source()
    {
        var job = One();
        var heated = job with { Place = job.Place with { Hold = Temperature.FromDegreesFahrenheit(62), Heater = HeaterKind.Open } };

        PrepJob.Sequence(heated).Codes().ShouldContain("ignition");
        PrepJob.Sequence(heated with { Place = heated.Place with { Heater = HeaterKind.Sealed } }).Codes().ShouldNotContain("ignition");
    }

    [Fact]
    public void A_product_without_a_class_is_data_missing()
    {
        var job = One();
        var unknown = job with
        {
            Products =
            [
                new JobProduct
                {
                    Key = PrepJob.Enamel,
                    Label = new ProductLabel
                    {
                        Covers = Area.FromSquareFeet(12),
                        Times = new LabelTimes { Touch = Duration.FromMinutes(20), Handle = Duration.FromHours(2), Through = Duration.FromHours(24) },
                        Recoat = [new RecoatWindow(Duration.FromHours(1), null, FromTouch: false)],
                        Limits = new LabelLimits
                        {
                            Air = new QuantityRange<Temperature>(Temperature.FromDegreesFahrenheit(50), Temperature.FromDegreesFahrenheit(90)),
                        },
                    },
                },
                .. job.Products.Where(product => product.Key != PrepJob.Enamel),
            ],
        };

        PrepJob.Sequence(unknown).Warnings.Where(warning => warning.Code == "data-missing").ShouldAllBe(warning => warning.Product == PrepJob.Enamel);
        PrepJob.Sequence(unknown).Codes().ShouldContain("data-missing");
    }

    [Fact]
    public void Other_rooms_write_their_warnings_from_the_same_texts()
    {
        var warning = WarningTexts.Standard.Write(
            "past-label-coats", "hood", "black", ("coats", "5 coats"), ("product", "Satin black"), ("surface", "Hood"), ("most", "3"));

        warning.Code.ShouldBe("past-label-coats");
        warning.Text.ShouldStartWith("5 coats of Satin black on Hood are more than the 3 of its label.");
    }

    [Fact]
    public void A_text_without_all_its_values_is_a_callers_mistake() =>
        Should.Throw<ArgumentException>(() => WarningTexts.Standard.Write("past-label-coats", "hood", "black", ("coats", "5")));

    private static Job One(string material = "steel", string finish = "bare", string system = PrepJob.EtchAndEnamel) =>
        PrepJob.Of(PrepJob.Surface(material: material, finish: finish, system: system));

    private static Job Named(string name) => PrepJob.Of(PrepJob.Surface(name));

    private static Job Near(string near, string system = PrepJob.EtchAndEnamel) => PrepJob.Of(PrepJob.Surface(system: system, near: [near]));

    private static Job Spots(string system) => PrepJob.Of(PrepJob.Surface(finish: "factory paint", system: system, condition: ["chips"]));

    private static Job Hot(double degreesF) =>
        PrepJob.Of(PrepJob.Surface(near: ["hot part"]) with { Heat = Temperature.FromDegreesFahrenheit(degreesF) });

    private static Job Ignited(string what) => One() is var job ? job with { Place = job.Place with { Ignition = [what] } } : job;

    private static Job Checked(params double[] psi) =>
        One() with { Checks = new Checks { CylinderPressures = [.. psi.Select(reading => Pressure.FromPoundsForcePerSquareInch(reading))] } };

    private static Job Held(double cap, double start, double end) => One() with
    {
        Checks = new Checks
        {
            PressureTest = new PressureTest
            {
                Cap = Pressure.FromPoundsForcePerSquareInch(cap),
                Start = Pressure.FromPoundsForcePerSquareInch(start),
                End = Pressure.FromPoundsForcePerSquareInch(end),
            },
        },
    };
}
