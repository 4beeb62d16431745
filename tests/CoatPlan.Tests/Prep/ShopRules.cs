using CoatPlan.Areas;
using CoatPlan.Prep;
using CoatPlan.Presets;

namespace CoatPlan.Tests.Prep;

public class ShopRules
{
    [Fact]
    public void A_row_of_a_shop_is_added_to_the_rules()
    {
        const string text = """
            rules:
              shop-tag-photo: {operation: wash, way: rinse, when: {finish: [powder coat]}, why: "Our shop washes {surfaces} whatever else.", source: "shop", status: common practice}
            """;

        var rules = PrepRules.Standard.With(text, "shop.yaml", out var problems);

        problems.ShouldBeEmpty();
        Wash(rules).ShouldStartWith("Our shop washes Bracket");
        Wash(PrepRules.Standard).ShouldBeEmpty();
    }

    [Fact]
    public void A_row_of_a_shop_with_a_key_that_is_there_takes_its_place()
    {
        const string text = """
            warnings:
              needs-primer: {code: needs-primer, about: surface, text: "Prime {surface}. Always.", status: common practice}
            """;

        var texts = WarningTexts.Standard.With(text, "shop.yaml", out var problems);
        var job = PrepJob.Of(PrepJob.Surface(material: "aluminium", system: PrepJob.Enamel));

        problems.ShouldBeEmpty();
        Build(job, new PrepTexts(PrepRules.Standard, texts)).Warnings.Single(warning => warning.Code == "needs-primer").Text
            .ShouldBe("Prime Bracket. Always. (common practice)");
    }

    [Fact]
    public void Every_mistake_of_a_shops_file_is_told_with_its_place()
    {
        const string text = """
            rules:
              a: {operation: wash, whne: {finish: [bare]}, why: "x", status: estimate}
              b: {why: "y", status: estimate}
              c: {operation: washh, why: "z", status: estimate}
              d: {operation: scuff, way: gently, when: {materail: [steel]}, wait: an-age, why: "z", status: estimate}
            ruels: {}
            """;

        PrepRules.Standard.With(text, "shop.yaml", out var problems);

        problems.Select(problem => (problem.File, problem.Line, problem.Code)).ShouldBe(
        [
            ("shop.yaml", 2, "unknown-key"), ("shop.yaml", 3, "missing-key"), ("shop.yaml", 4, "unknown-name"),
            ("shop.yaml", 5, "unknown-name"), ("shop.yaml", 5, "unknown-key"), ("shop.yaml", 5, "unknown-name"), ("shop.yaml", 6, "unknown-key"),
        ]);
    }

    [Fact]
    public void A_judgement_that_names_no_warning_is_told()
    {
        WarningTexts.Standard.With("judgements:\n  x: {on: layer, verdict: no, rows: [nothing]}\n", "shop.yaml", out var problems);

        problems.ShouldHaveSingleItem().ToString().ShouldStartWith("shop.yaml:2:");
    }

    [Fact]
    public void The_rules_that_come_along_read_without_a_problem_and_name_only_what_there_is()
    {
        var words = PrepJob.Catalogue.Operations.ToDictionary(operation => operation.Word);
        var rules = PrepRules.Standard;

        new PrepRules().With(RuleFile.Embedded("prep.yaml"), "prep.yaml", out var problems);
        problems.ShouldBeEmpty();
        WarningTexts.Standard.With(RuleFile.Embedded("warnings.yaml"), "warnings.yaml", out problems);
        problems.ShouldBeEmpty();
        rules.Rules.ShouldAllBe(rule => words.ContainsKey(rule.Operation));
        rules.Rules.ShouldAllBe(rule => rule.Way == null || rules.Way(rule.Operation, rule.Way) != null);
        rules.Rules.ShouldAllBe(rule => rule.Why != null || rule.Note != null);
        rules.Ways.ShouldAllBe(way => way.Rate == null || words[way.Operation].Rate(way.Rate) != null);
        rules.Ways.Select(way => way.Wait).Concat(rules.Rules.Select(rule => rule.Wait)).OfType<string>()
            .ShouldAllBe(wait => rules.Wait(wait, PrepJob.Catalogue).Time > Duration.Zero);
        rules.Between.ShouldAllBe(row => rules.Way("scuff", row.Way) != null);
        WarningTexts.Standard.Judgements.SelectMany(row => row.Rows).ShouldAllBe(id => WarningTexts.Standard.Rows.Any(row => row.Id == id));
    }

    private static string Wash(PrepRules rules) =>
        Build(PrepJob.Of(PrepJob.Surface(finish: "powder coat", system: PrepJob.Enamel)), new PrepTexts(rules, WarningTexts.Standard))
            .Operations.Where(operation => operation.Word == "wash").Select(operation => operation.Why).FirstOrDefault("");

    private static Sequence Build(CoatPlan.Jobs.Job job, PrepTexts texts) =>
        PrepSequence.Build(job, PrepJob.Catalogue, Labels.Resolve(job, PrepJob.Catalogue).Labels!, SurfaceAreas.Measure(job, PrepJob.Catalogue), texts);
}
