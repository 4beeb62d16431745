using System.Text.RegularExpressions;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Csv;
using CoatPlan.Tests.Timetable;

namespace CoatPlan.Tests.Sheets;

/// <summary>A metric job is bought for and read in metric units.</summary>
public class MetricOnPaper
{
    private static readonly Lazy<Plan> s_metric = new(() => PlanIn("metric"));

    [Fact]
    public void No_amount_is_in_quarts_or_square_feet()
    {
        var text = Text(s_metric.Value);

        text.ShouldContain("0.95 L");
        Regex.Matches(text, @".{0,30}(ft²|\bqt\b).{0,20}").Select(match => match.Value).ShouldBeEmpty();
        ShoppingList.Write(s_metric.Value).ShouldNotContain("qt");
        ShoppingList.Write(s_metric.Value).ShouldNotContain("ft²");
    }

    [Fact]
    public void Film_and_tape_are_in_metres()
    {
        var film = s_metric.Value.Consumables.Single(item => item.Word == "masking-film");
        var tape = s_metric.Value.Consumables.Single(item => item.Word == "tape");

        new PlanWords(s_metric.Value).Amount(film.Amount, film.Unit).ShouldBe(FormattableString.Invariant($"{film.Amount * 0.09290304:0.##} m²"));
        tape.Why.ShouldMatch(@"^mask: [0-9.]+ m of tape");
    }

    [Fact]
    public void A_temperature_in_a_text_is_told_in_both() =>
        Regex.Matches(Text(s_metric.Value), @".{0,40}°F(?! \().{0,10}").Select(match => match.Value).ShouldBeEmpty();

    [Fact]
    public void A_us_job_keeps_its_units()
    {
        var plan = PlanIn("us");

        Text(plan).ShouldContain("1 qt");
        plan.Consumables.Single(item => item.Word == "degreaser-greasy").Why.ShouldBe("degrease: one qt does 25 ft² (2.3 m²)");
    }

    private static string Text(Plan plan) => Regex.Replace(string.Concat(SheetSet.Of(plan).Select(sheet => SheetSamples.Text(sheet))), @"\s+", " ");

    private static Plan PlanIn(string units) => new HandJob
    {
        More = $"units: {units}",
        Surfaces =
        [
            "{name: Rail, material: steel, finish: factory paint, condition: [oily, chips], area: 4 ft2, stays: true, system: one}",
            "{name: Tray, material: steel, finish: bare, condition: [light rust], area: 1 ft2, system: one}",
        ],
    }.Plan(CoatPlan.Timetable.SearchDepth.Quick);
}
