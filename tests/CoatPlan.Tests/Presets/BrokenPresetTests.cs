using CoatPlan.Presets;
using CoatPlan.Problems;

namespace CoatPlan.Tests.Presets;

public sealed class BrokenPresetTests
{
    [Fact]
    public void Every_mistake_is_told_in_one_go_with_file_line_and_column()
    {
        var problems = Problems(
            """
            products:
              underhood-black-aerosol:
                covers: 16 in
                hidin: good
                drying: sun
                solvents: {tolueen: 10 %}
            materials:
              steel: {gauge: -1 mm}
            wind: {}
            """);

        problems.Select(problem => problem.ToString()).ShouldBe(
        [
            "shop.yaml:3:13: `covers` in products `underhood-black-aerosol` is `16 in`, a length, expected an area such as `8 ft2`",
            "shop.yaml:4:5: unknown key `hidin` in products `underhood-black-aerosol`, expected a key of products `underhood-black-aerosol`; did you mean `hiding`?",
            "shop.yaml:5:13: unknown `drying` in products `underhood-black-aerosol` `sun`, expected one of solvent, oxidation, waterborne, moisture, two-part",
            problems[3].ToString(),
            "shop.yaml:8:18: `gauge` in materials `steel` is `-1 mm`, expected more than 0 and at most 1,000 m",
            problems[5].ToString(),
        ]);
        problems[3].Mend.ShouldBe("`toluene`");
        problems[5].Message.ShouldBe("unknown key `wind` in the presets");
    }

    [Fact]
    public void A_new_row_without_its_fields_says_which_are_missing()
    {
        var problems = Problems("materials: {bronze: {family: copper alloy}}");

        string[] missing = ["density", "heat", "conductivity", "gauge", "relief", "lightness", "source", "status"];
        problems.Select(problem => problem.Message).ShouldBe(missing.Select(key => $"`{key}` is missing in materials `bronze`"), ignoreOrder: true);
        problems.ShouldAllBe(problem => problem.Line == 1 && problem.Column == 13);
    }

    [Theory]
    [InlineData("", "empty-file")]
    [InlineData("# nothing\n", "empty-file")]
    [InlineData("- a\n- b\n", "wrong-type")]
    [InlineData("materials: [steel]\n", "wrong-type")]
    [InlineData("materials: {steel: 5}\n", "wrong-type")]
    [InlineData("materials:\n  steel: {gauge: 1 mm}\n  steel: {gauge: 2 mm}\n", "repeated-key")]
    [InlineData("materials: {steel: {gauge: 1 mm, gauge: 2 mm}}\n", "repeated-key")]
    [InlineData("materials: {steel: {gauge: }}\n", "wrong-type")]
    [InlineData("materials: {steel: {gauge: 1}}\n", "no-unit")]
    [InlineData("materials: {steel: {gauge: 1 furlong}}\n", "unknown-unit")]
    [InlineData("materials: {steel: {heat: 480}}\n", "wrong-type")]
    [InlineData("materials: {steel: {heat: 480 J/kg}}\n", "wrong-type")]
    [InlineData("materials: {steel: {relief: 0.5}}\n", "out-of-range")]
    [InlineData("materials: {steel: {family: iron}}\n", "unknown-word")]
    [InlineData("materials: {steel: {status: sure}}\n", "unknown-word")]
    [InlineData("materials: {steel: {gauge: 1 mm}\n", "not-yaml")]
    [InlineData("materials:\n\tsteel: {gauge: 1 mm}\n", "tab")]
    [InlineData("sources: [a]\nmaterials: {steel: {gauge: 1 mm}}\n", "wrong-type")]
    [InlineData("products: {clear-aerosol: {coats: 3-2}}\n", "out-of-range")]
    [InlineData("products: {clear-aerosol: {coats: many}}\n", "out-of-range")]
    [InlineData("products: {clear-aerosol: {recoat: soon}}\n", "not-a-window")]
    [InlineData("products: {clear-aerosol: {limits: {humidity: 140 %}}}\n", "out-of-range")]
    [InlineData("products: {clear-aerosol: {limits: {air: 90-50 °F}}}\n", "order")]
    [InlineData("products: {clear-aerosol: {limits: {wind: 5 mph}}}\n", "unknown-key")]
    [InlineData("products: {clear-aerosol: {hiding: lots}}\n", "unknown-word")]
    [InlineData("products: {clear-aerosol: {hiding: 1.5}}\n", "out-of-range")]
    [InlineData("products: {clear-aerosol: {hazards: [loud]}}\n", "unknown-word")]
    [InlineData("products: {clear-aerosol: {must-hide: perhaps}}\n", "wrong-type")]
    [InlineData("solvents: {toluene: {pel: 100}}\n", "wrong-type")]
    [InlineData("solvents: {toluene: {pel: 100 g; published}}\n", "wrong-type")]
    [InlineData("solvents: {toluene: {lel: 1.1 %; published}}\n", "wrong-type")]
    [InlineData("solvents: {toluene: {ozone: 4}}\n", "wrong-type")]
    [InlineData("solvents: {toluene: {ozone: 400; published}}\n", "out-of-range")]
    [InlineData("consumables: {tape: {price: cheap}}\n", "not-a-number")]
    [InlineData("consumables: {tape: {price: -1}}\n", "out-of-range")]
    [InlineData("operations: {wash: {stage: 11}}\n", "out-of-range")]
    [InlineData("operations: {wash: {stage: 2.5}}\n", "wrong-type")]
    [InlineData("operations: {wash: {rates: {hose: {per-m2: 5}}}}\n", "wrong-type")]
    [InlineData("conditions: {oily: {asks: [sweep]}}\n", "unknown-word")]
    [InlineData("figures: {wind-limit: {time: 5 min}}\n", "one-of")]
    [InlineData("figures: {no-spray-from: {clock: '25:00'}}\n", "wrong-type")]
    [InlineData("compatibility: {on-material: {rows: {clear-aerosol: {steel: maybe A}}}}\n", "unknown-word")]
    [InlineData("compatibility: {on-material: {rows: {clear-aerosol: {steel: yes Q9}}}}\n", "unknown-word")]
    [InlineData("compatibility: {on-material: {rows: {clear-aerosol: {tin: yes A}}}}\n", "unknown-word")]
    [InlineData("compatibility: {on-material: {rows: {varnish: {steel: yes A}}}}\n", "unknown-word")]
    [InlineData("compatibility: {on-material: {rows: {clear-aerosol: [yes A]}}}\n", "wrong-type")]
    [InlineData("a: &a [*a]\n", "cycle")]
    public void A_broken_file_is_told_by_its_kind(string text, string code)
    {
        var problems = Problems(text);

        problems.Select(problem => problem.Code).ShouldContain(code, string.Join("\n", problems));
        problems.ShouldAllBe(problem => problem.File == "shop.yaml" && problem.Line >= 1 && problem.Column >= 1);
    }

    [Fact]
    public void A_row_that_two_built_in_files_hold_is_a_mistake()
    {
        var reading = CatalogueReader.Read([.. BuiltInPresets.Texts, new("more.yaml", "figures: {wind-limit: {speed: 8 mph}}")], []);

        reading.Problems.Select(problem => problem.Code).ShouldContain("repeated-name");
    }

    [Fact]
    public void No_text_makes_the_reader_throw() =>
        CsCheck.Check.Sample(
            CsCheck.Gen.String[CsCheck.Gen.Char["materials steel:{}[],'\"#&*!|>-? \n\t1%°é\u0000"], 0, 60],
            text => CatalogueReader.Read([], [new("x.yaml", text)]).ShouldNotBeNull(),
            iter: 2_000);

    private static ImmutableArray<Problem> Problems(string text)
    {
        var reading = CatalogueReader.Read(BuiltInPresets.Texts, [new("shop.yaml", text)]);
        reading.Catalogue.ShouldBeNull();
        return reading.Problems;
    }
}
