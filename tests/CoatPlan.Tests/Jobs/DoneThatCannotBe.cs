using CoatPlan.Problems;

namespace CoatPlan.Tests.Jobs;

/// <summary>What is told as done and cannot have been is a mistake at its place, never passed over.</summary>
public class DoneThatCannotBe
{
    private const string First = "{surface: lid, layer: 1, coat: 1, at: 2027-05-14 10:00}";

    [Theory]
    // The label's most; what hides the old colour may take more coats than the system asks.
    [InlineData("{surface: lid, layer: 2, coat: 5}", "`coat` is `5`, expected 0 to 4, the most that layer 2 of `s` takes unless its `coats` asks for more")]
    // More than the label's most, asked for by the system.
    [InlineData("{surface: tray, layer: 1, coat: 7}", "`coat` is `7`, expected 0 to 6, the most that layer 1 of `thick` takes unless its `coats` asks for more")]
    // The class's own most.
    [InlineData("{surface: lid, layer: 1, coat: 9}", "`coat` is `9`, expected 0 to ")]
    [InlineData("{surfaces: [lid, tray], layer: 2, coat: 1}", "`layer` is `2`, expected 1 to 1, the layers of `thick`")]
    public void A_coat_that_no_layer_takes_is_a_mistake(string entry, string said)
    {
        var problem = Problems(entry).ShouldHaveSingleItem();

        problem.Code.ShouldBe("out-of-range");
        problem.ToString().ShouldContain(said);
        problem.Line.ShouldBe(15);
        problem.Column.ShouldBeGreaterThan("done: [".Length);
    }

    [Theory]
    [InlineData("{surface: lid, layer: 2, coat: 4}")]
    [InlineData("{surface: lid, layer: 2, coat: 0}")]
    [InlineData("{surface: tray, layer: 1, coat: 6}")]
    public void A_coat_that_a_layer_may_take_is_none(string entry) => Problems(entry).ShouldBeEmpty();

    [Fact]
    public void A_coat_that_ended_before_the_one_below_it_is_a_mistake()
    {
        var problem = Problems($"{First}, {{surfaces: [tray, lid], layer: 2, coat: 1, at: 2027-05-14 09:00}}".Replace("tray, ", "", StringComparison.Ordinal)).ShouldHaveSingleItem();

        problem.Code.ShouldBe("order");
        problem.ToString().ShouldContain("`at` is `2027-05-14 09:00`, expected no earlier than 2027-05-14 10:00, the end of coat 1 of layer 1 below it on `lid`");
    }

    [Theory]
    [InlineData("{surface: lid, layer: 2, coat: 1, at: 2027-05-14 10:00}")]
    [InlineData("{surface: lid, layer: 2, coat: 1}")]
    [InlineData("{surface: tray, layer: 1, coat: 2, at: 2027-05-14 09:00}")]
    // Put on a second time after it was taken off.
    [InlineData("{surface: lid, layer: 2, coat: 1, at: 2027-05-14 11:00}, {surface: lid, layer: 1, coat: 1, at: 2027-05-14 12:00}")]
    public void Coats_in_their_order_and_on_other_surfaces_are_none(string then) => Problems($"{First}, {then}").ShouldBeEmpty();

    private static ImmutableArray<Problem> Problems(string done) => JobIntake.Read(
        $$$$"""
        coatplan: 1
        job: Begun
        start: 2027-05-14 08:00
        place: {volume: 50 m3, weather: {steady: {air: 70 °F, humidity: 50 %}}}
        crew: {people: 1, hours: {Mon-Fri: 08:00-18:00}}
        products:
          etch: {preset: etch-primer-aerosol}
          black: {preset: underhood-black-aerosol, coats: 2-4}
        systems:
          s: [{product: etch, coats: 1}, {product: black, coats: 2}]
          thick: [{product: black, coats: 6}]
        surfaces:
          - {name: Lid, material: steel, finish: bare, area: 1 ft2, system: s}
          - {name: Tray, material: steel, finish: bare, area: 1 ft2, system: thick}
        done: [{{{{done}}}}]
        """,
        "begun.job.yaml", Trade.Standard, _ => FileText.Unreadable("no forecast is named")).Problems;
}
