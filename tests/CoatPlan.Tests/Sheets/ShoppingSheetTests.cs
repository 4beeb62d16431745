using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Pdf;
using CoatPlan.Tests.Plans;

namespace CoatPlan.Tests.Sheets;

public class ShoppingSheetTests
{
    [Fact]
    public void Each_coating_to_buy_has_its_cans_and_its_price()
    {
        var plan = SheetSamples.Roadster();
        var rows = Grids(plan)[0].Rows;

        rows.Select(row => (row[1], row[2], row[3])).ShouldBe(plan.Supplies.Where(supply => supply.Buy > 0).Select(supply => (supply.Name, supply.Buy == 1 ? "1 can" : $"{supply.Buy} cans", FormattableString.Invariant($"{supply.Price:0.00} USD"))));
    }

    [Fact]
    public void Cans_that_are_sold_together_are_bought_by_the_pack() =>
        Grids(SheetSamples.Van())[0].Rows.Single(row => row[1] == "Red oxide rust primer")[2].ShouldBe("2 cans: 1 pack of 6");

    [Fact]
    public void Everything_used_up_has_its_amount_and_what_it_is_for()
    {
        var plan = SheetSamples.Roadster();
        var rows = Grids(plan)[1].Rows;

        rows.Length.ShouldBe(plan.Consumables.Count(item => item.Amount > 0));
        foreach (var (item, row) in plan.Consumables.Where(item => item.Amount > 0).Zip(rows))
        {
            row[1].ShouldBe(item.Item);
            row[2].ShouldStartWith(FormattableString.Invariant($"{item.Amount:0.##} {CoatPlan.Supplies.UnitWords.Behind(item.Amount, item.Unit)}"));
            row[4].ShouldBe(item.Why);
        }
    }

    [Fact]
    public void What_is_on_the_shelf_is_not_bought()
    {
        var plan = SamplePlan.Weekend();

        Grids(plan)[0].Rows.Select(row => row[1]).ShouldBe(["Satin black, underhood"]);
        ShoppingSheet.Of(plan).Blocks.OfType<Bullets>().Single().Items.ShouldBe(["Etch primer: 1 of 1 can"]);
    }

    [Fact]
    public void Known_prices_are_added_and_the_others_counted()
    {
        var plan = SamplePlan.Weekend();
        Sum(plan).ShouldBe("Known prices add to 28.50 USD; the prices of 2 lines are not known.");
        Sum(plan with { Currency = "JPY", Consumables = [] }).ShouldBe($"Known prices add to {CoatPlan.Supplies.MinorUnits.Write(28.5m, "JPY")}.");
        Sum(plan with { Supplies = [] }).ShouldBe("No price is known.");
    }

    [Fact]
    public void A_full_shelf_leaves_nothing_to_buy()
    {
        var plan = SamplePlan.Weekend();
        plan = plan with { Supplies = [.. plan.Supplies.Select(supply => supply with { Buy = 0 })], Consumables = [] };

        Grids(plan).ShouldBeEmpty();
        Sum(plan).ShouldStartWith("Nothing");
    }

    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public void Each_example_fits_on_one_page(PaperSize paper)
    {
        foreach (var plan in (Plan[])[SheetSamples.Roadster(), SheetSamples.Van(), SheetSamples.Class()])
            SheetSamples.Pages(ShoppingSheet.Of(plan), paper).Length.ShouldBe(1, plan.Job);
    }

    [Fact]
    public void What_comes_out_of_a_pack_above_costs_nothing_more_and_says_so()
    {
        var plan = SheetSamples.Van();
        var shared = plan.Consumables.Where(item => item is { Amount: > 0, Packs: 0 }).Select(item => item.Item).ToArray();
        var rows = Grids(plan)[1].Rows.Where(row => shared.Contains(row[1])).ToArray();

        rows.ShouldNotBeEmpty();
        rows.ShouldAllBe(row => row[2].EndsWith("out of a pack above") && row[3] == "");
    }

    private static string Sum(Plan plan) => ShoppingSheet.Of(plan).Blocks.OfType<Paragraph>().First().Text;

    private static Grid[] Grids(Plan plan) => [.. ShoppingSheet.Of(plan).Blocks.OfType<Grid>()];
}
