using CoatPlan.Explanations;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Explanations;

public sealed class FiguresAskedFor
{
    private const string Text = """
        coatplan: 1
        job: Bench
        start: 2027-05-14 08:00
        reserve: 10 %
        place: {room: {length: 22 ft, width: 20 ft, height: 9 ft}, exhaust: 800 cfm, weather: {steady: {air: 70 °F, humidity: 50 %}}}
        crew: {people: 1, hours: {Mon-Sun: 08:00-18:00}}
        products: {black: {preset: underhood-black-aerosol, name: Satin black, covers: 10 ft2, package: {net: 12 oz, price: 9.50}}}
        systems: {s: [{product: black, coats: 2}]}
        surfaces: [{name: Inner fender, count: 2, material: steel, finish: factory paint, lead-test: negative, area: 8 ft2, relief: 1.25, system: s}]
        prices: {labour: 85 /h, markup: 25 %, tax: 8.25 %}
        """;

    private static readonly Workings Bench = Planner.Work(JobIntake.Read(Text, "bench.job.yaml", Trade.Standard, _ => FileText.Unreadable("none")).Ready!, SearchDepth.Quick).Workings;

    [Fact]
    public void Cans_are_explained_down_to_the_label_and_the_area()
    {
        // 2 × 8 ft² × 1.25 = 20 ft², two coats at 10 ft² a can are 4 cans, a tenth of reserve makes 4.4, so 5.
        var cans = Of("cans black");

        cans.Path.ShouldBe("supplies[black].cans");
        cans.Number.ShouldBe(5);
        var likely = cans.Inputs.Single(input => input.What.StartsWith("likely packages", StringComparison.Ordinal));
        likely.Number!.Value.ShouldBe(4, 1e-9);
        likely.Inputs.Length.ShouldBe(2);
        All(cans).ShouldContain(one => one.What.StartsWith("area one package covers, as the label", StringComparison.Ordinal) && one.Value == "10 ft²" && one.Source == "the job file");
        All(cans).ShouldContain(one => one.What == "reserve" && one.Value == "10 %");
        All(cans).ShouldContain(one => one.What.StartsWith("relief", StringComparison.Ordinal) && one.Number == 1.25);
    }

    [Fact]
    public void One_pack_is_told_as_one()
    {
        var priced = Text.Replace("tax: 8.25 %}", "tax: 8.25 %, consumables: {tack cloth: {price: 1.50}}}", StringComparison.Ordinal);
        var workings = Planner.Work(JobIntake.Read(priced, "bench.job.yaml", Trade.Standard, _ => FileText.Unreadable("none")).Ready!, SearchDepth.Quick).Workings;
        var packs = workings.Consumables.Single(one => one.Word == "tack-cloth").Packs;

        Explaining.Of(workings, "quote.consumables").Explanation!.Inputs.ShouldHaveSingleItem().What.ShouldBe(packs == 1 ? "tack cloth, 1 pack" : $"tack cloth, {packs} packs");
        packs.ShouldBe(1);
    }

    [Theory]
    [InlineData("supplies[0].cans")]
    [InlineData("supplies.black.cans")]
    [InlineData("CANS Black")]
    [InlineData("cans satin-black")]
    public void One_figure_goes_by_many_names(string name) => Of(name).Path.ShouldBe("supplies[black].cans");

    [Theory]
    [InlineData("finish", "finish")]
    [InlineData("air", "air")]
    [InlineData("air mixture", "air.byStep")]
    [InlineData("exhaust for limit", "air.exhaustForLimitM3PerMin")]
    [InlineData("quote", "quote.total")]
    [InlineData("quote inner-fender", "quote.lines[0].total")]
    [InlineData("hours scuff", "quote.hours")]
    [InlineData("area inner fender", "surfaces[inner-fender].areaM2")]
    [InlineData("coats inner-fender black", "layers[0].coats")]
    [InlineData("cartridge", "respirator.cartridgeH")]
    [InlineData("maximum use acetone", "air.bySolvent")]
    [InlineData("ozone black", "supplies[black].ozonePerCanG")]
    [InlineData("test panel black", "supplies[black].panelGrams")]
    [InlineData("price tack-cloth", null)]
    [InlineData("amount tack-cloth", "consumables[tack-cloth].amount")]
    public void Plain_names_find_their_figure(string name, string? path)
    {
        var reading = Explaining.Of(Bench, name);

        if (path is null) reading.Explanation.ShouldBeNull();
        else reading.Explanation!.Path.ShouldStartWith(path);
    }

    [Fact]
    public void A_step_is_asked_for_by_its_number_or_its_id_and_so_is_the_wait_that_counts()
    {
        var second = Bench.Steps.Last(step => step.Product == "black");
        var number = Bench.Steps.IndexOf(second) + 1;

        var least = Of($"step {number} leastMin");

        least.Number.ShouldBe(second.After.First(wait => wait.LeastMin is not null).LeastMin);
        Of($"step {second.Id} leastMin").Path.ShouldBe(least.Path);
        Of(second.Id).What.ShouldContain(second.Title);
        All(least).ShouldContain(one => one.What.StartsWith("factor for 10 K", StringComparison.Ordinal));
    }

    [Fact]
    public void The_finish_is_followed_back_step_by_step()
    {
        var finish = Of("finish");

        finish.Inputs.Length.ShouldBeGreaterThan(3);
        finish.Inputs.ShouldAllBe(step => step.Formula.Length > 0);
        finish.Inputs[0].What.ShouldContain(Bench.Steps.MaxBy(step => step.End)!.Title);
    }

    [Theory]
    [InlineData("cans blck", "cans black")]
    [InlineData("finsh", "finish")]
    [InlineData("quote labor", "labour")]
    [InlineData("the colour of the sky", "finish")]
    public void What_nobody_knows_is_answered_with_what_comes_near(string asked, string near)
    {
        var reading = Explaining.Of(Bench, asked);

        reading.Explanation.ShouldBeNull();
        reading.Suggestions.ShouldContain(near);
    }

    private static Explanation Of(string what) => Explaining.Of(Bench, what).Explanation.ShouldNotBeNull(what);

    private static IEnumerable<Explanation> All(Explanation explanation) => explanation.Inputs.SelectMany(All).Prepend(explanation);
}
