using CoatPlan.Cautions;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Tests.Prep;
using UnitsNet;

namespace CoatPlan.Tests.Cautions;

public class CautionsOfAJob
{
    [Fact]
    public void Every_list_of_cautions_ends_with_the_deferral()
    {
        Of(PrepJob.Of(PrepJob.Surface()))[^1].Code.ShouldBe("deferral");
        Of(PrepJob.Of(PrepJob.Surface(stays: true, near: ["fuel line"])))[^1].Text.ShouldContain("local codes and licensed practice win over both");
    }

    // Common practice: eye protection and a respirator for painting even where no hardener is used.
    [Fact]
    public void Eyes_and_a_painting_respirator_are_named_without_any_hardener()
    {
        var codes = Codes(PrepJob.Of(PrepJob.Surface(system: PrepJob.Enamel)));

        codes.ShouldContain("eyes");
        codes.ShouldContain("respirator");
        codes.ShouldNotContain("isocyanates");
    }

    public static TheoryData<string> Conditional =>
    [
        "isocyanates", "lead", "cadmium", "zinc", "asbestos", "coolant", "battery", "hot-cap", "rags-oil", "can-warmth", "heater", "ignition-listed",
        "closed-room", "outdoors", "others", "airbag", "fuel", "refrigerant", "brake-fluid", "acid", "first-warm-up", "heat-cure", "class", "lead-found",
        "sealed-heater", "check-brakes", "dust", "sparks", "zinc-rich",
    ];

    private static readonly Dictionary<string, (Job Told, Job Not)> Cases = new()
    {
        ["isocyanates"] = (System("epoxy-primer-2k-aerosol+urethane-2k-aerosol"), System(PrepJob.Enamel)),
        ["lead"] = (With(PrepJob.Surface(finish: "unknown")), With(PrepJob.Surface())),
        ["lead-found"] = (With(PrepJob.Surface(finish: "unknown") with { LeadTest = LeadTestResult.Positive }), With(PrepJob.Surface(finish: "unknown"))),
        ["cadmium"] = (With(PrepJob.Surface(material: "cadmium-plated steel")), With(PrepJob.Surface())),
        ["zinc"] = (With(PrepJob.Surface(material: "zinc-plated steel")), With(PrepJob.Surface())),
        ["asbestos"] = (With(PrepJob.Surface("Clutch housing")), With(PrepJob.Surface())),
        ["coolant"] = (With(PrepJob.Surface(stays: true)), With(PrepJob.Surface())),
        ["hot-cap"] = (With(PrepJob.Surface(stays: true)), With(PrepJob.Surface())),
        ["first-warm-up"] = (With(PrepJob.Surface(stays: true)), With(PrepJob.Surface())),
        ["battery"] = (With(PrepJob.Surface(stays: true)), Stations(6)),
        ["class"] = (Stations(6), With(PrepJob.Surface())),
        ["rags-oil"] = (System(PrepJob.Enamel), System("lacquer-aerosol")),
        ["can-warmth"] = (System(PrepJob.Enamel), System("moisture-cure-urethane")),
        ["heater"] = (Heated(HeaterKind.Open), Heated(HeaterKind.Sealed)),
        ["sealed-heater"] = (Heated(HeaterKind.Sealed), Heated(HeaterKind.Open)),
        ["ignition-listed"] = (Place(place => place with { Ignition = ["gas water heater"] }), Place(place => place)),
        ["closed-room"] = (Place(place => place), Place(place => place with { Exhaust = VolumeFlow.FromCubicMetersPerMinute(20) })),
        ["outdoors"] = (Place(place => place with { Outdoors = true, Volume = null }), Place(place => place)),
        ["others"] = (Place(place => place), Place(place => place with { Outdoors = true, Volume = null })),
        ["airbag"] = (Near("airbag"), Near("fuel line")),
        ["fuel"] = (Near("fuel line"), Near("airbag")),
        ["refrigerant"] = (Near("air-conditioning line"), Near("airbag")),
        ["brake-fluid"] = (Near("brake reservoir"), Near("airbag")),
        ["acid"] = (System(PrepJob.EtchAndEnamel), System(PrepJob.Enamel)),
        ["heat-cure"] = (System("high-heat-aerosol"), System(PrepJob.Enamel)),
        ["check-brakes"] = (With(PrepJob.Surface(masks: [new MaskItem { What = "disc face", Kind = "friction face" }])), With(PrepJob.Surface())),
        ["dust"] = (With(PrepJob.Surface(condition: ["scaly rust"])), With(PrepJob.Surface(material: "cadmium-plated steel"))),
        ["sparks"] = (With(PrepJob.Surface(condition: ["scaly rust"])), With(PrepJob.Surface())),
        ["zinc-rich"] = (System("zinc-rich-aerosol"), System(PrepJob.Enamel)),
    };

    [Theory]
    [MemberData(nameof(Conditional))]
    public void A_caution_is_told_where_it_follows_and_not_elsewhere(string code)
    {
        Codes(Cases[code].Told).ShouldContain(code);
        Codes(Cases[code].Not).ShouldNotContain(code);
    }

    [Fact]
    public void A_caution_names_what_in_this_job_it_is_about() =>
        Of(System("epoxy-primer-2k-aerosol+urethane-2k-aerosol")).Single(caution => caution.Code == "isocyanates").Text
            .ShouldStartWith(LabelOf("urethane-2k-aerosol"));

    /// <summary>One batch: the old repaint is dulled wet, rust comes off the stainless steel dry, and both are blown off in one step, which moves dust and makes none.</summary>
    [Fact]
    public void A_caution_of_dust_names_what_is_abraded_dry_and_not_what_is_only_blown_off()
    {
        var job = PrepJob.Of(
            PrepJob.Surface("Cover", finish: "repaint", system: PrepJob.EtchSpotsAndEnamel),
            PrepJob.Surface("Pipe", material: "stainless steel", system: PrepJob.EtchSpotsAndEnamel, condition: ["light rust"]));

        PrepJob.Sequence(job).The("blow-off").MakesDust.ShouldBeTrue();
        Of(job).Single(caution => caution.Code == "dust").Text.ShouldStartWith("Dry abrasion on Pipe:");
    }

    [Fact]
    public void A_caution_with_two_words_names_only_what_both_were_found_on()
    {
        var texts = CautionTexts.Standard.With(
            "cautions:\n  shop-rust: {when: {does: [derust], family: [ferrous]}, text: \"{who} rusts again.\", source: \"shop\"}\n", "shop.yaml", out _);
        var facts = Facts(PrepJob.Of(
            PrepJob.Surface("Tray", condition: ["light rust"]),
            PrepJob.Surface("Cover", material: "aluminium", condition: ["white corrosion"]),
            PrepJob.Surface("Fender")));

        CautionsFor.Job(facts, texts).Single(caution => caution.Code == "shop-rust").Text.ShouldBe("Tray rusts again.");
    }

    [Fact]
    public void A_rag_caution_names_only_what_heats_itself() =>
        Of(System("lacquer-aerosol+enamel-aerosol")).Single(caution => caution.Code == "rags-oil").Text.ShouldNotContain(LabelOf("lacquer-aerosol"));

    [Fact]
    public void Every_caution_has_a_source_and_calls_nothing_safe_and_leaves_no_name_in_braces()
    {
        foreach (var caution in Cases.Values.SelectMany(pair => Of(pair.Told)).Distinct())
        {
            caution.Source.ShouldNotBeEmpty();
            caution.Text.ShouldNotContain("{");
            caution.Text.ShouldNotContain(" safe ");
            caution.Text.ShouldNotStartWith(":");
        }
    }

    [Fact]
    public void No_entry_is_told_once_the_air_came_to_more_than_idlh()
    {
        var job = System(PrepJob.Enamel);

        CautionsFor.Job(Facts(job).With(new CautionFact("over", "idlh")), CautionTexts.Standard).ShouldContain(caution => caution.Code == "no-entry");
        Codes(job).ShouldNotContain("no-entry");
    }

    [Fact]
    public void A_shops_own_caution_comes_before_the_deferral()
    {
        var texts = CautionTexts.Standard.With(
            "cautions:\n  shop-rule: {text: \"Keys on the hook.\", source: \"shop\"}\n", "shop.yaml", out var problems);

        problems.ShouldBeEmpty();
        CautionsFor.Job(Facts(System(PrepJob.Enamel)), texts)[^2..].Select(caution => caution.Code).ShouldBe(["shop-rule", "deferral"]);
    }

    private static ImmutableArray<Caution> Of(Job job) => CautionsFor.Job(Facts(job), CautionTexts.Standard);

    private static string[] Codes(Job job) => [.. Of(job).Select(caution => caution.Code)];

    private static CautionFacts Facts(Job job) =>
        CautionFacts.From(job, Labels.Resolve(job, PrepJob.Catalogue).Labels!, PrepJob.Sequence(job));

    private static string LabelOf(string key) => Labels.Resolve(System(key), PrepJob.Catalogue).Labels![key].Name;

    private static Job System(string system) => With(PrepJob.Surface(system: system));

    private static Job With(JobSurface surface) => PrepJob.Of(surface);

    private static Job Near(string near) => With(PrepJob.Surface(near: [near]));

    private static Job Stations(int stations) => With(PrepJob.Surface()) is var job ? job with { Crew = job.Crew with { Stations = stations } } : job;

    private static Job Place(Func<Place, Place> change) => With(PrepJob.Surface()) is var job ? job with { Place = change(job.Place) } : job;

    private static Job Heated(HeaterKind heater) =>
        Place(place => place with { Hold = Temperature.FromDegreesFahrenheit(62), Heater = heater });
}
