using System.Globalization;
using CoatPlan.Sheets.Csv;
using CoatPlan.Supplies;
using CoatPlan.Tests.Plans;

namespace CoatPlan.Tests.Sheets;

public class CsvListTests
{
    [Fact]
    public void The_shopping_list_holds_every_coating_and_everything_used_up()
    {
        var plan = SheetSamples.Roadster();
        var rows = Rows(ShoppingList.Write(plan));

        rows.Count.ShouldBe(plan.Supplies.Length + plan.Consumables.Length);
        foreach (var (supply, row) in plan.Supplies.Zip(rows))
        {
            row["item"].ShouldBe(supply.Name);
            Number(row["needed"]).ShouldBe(supply.Cans);
            row["unit"].ShouldBe(supply.Cans == 1 ? "can" : "cans");
            Number(row["get"]).ShouldBe(supply.Buy);
            Number(row["packs to buy"]).ShouldBe(supply.Packs);
            row["price"].ShouldBe(supply.Price?.ToString("0.00", CultureInfo.InvariantCulture) ?? "");
            row["currency"].ShouldBe(supply.Price is null ? "" : "USD");
        }

        foreach (var (item, row) in plan.Consumables.Zip(rows.Skip(plan.Supplies.Length)))
        {
            row["item"].ShouldBe(item.Item);
            Number(row["get"]).ShouldBe(item.Amount, 1e-4);
            Number(row["packs to buy"]).ShouldBe(item.Packs);
            row["unit"].ShouldBe(UnitWords.Behind(item.Needed, item.Unit));
            row["why"].ShouldBe(item.Why);
        }
    }

    [Fact]
    public void Cans_that_are_sold_together_are_bought_in_whole_packs_and_pay_for_all_of_them()
    {
        var row = Rows(ShoppingList.Write(SheetSamples.Van())).Single(row => row["key"] == "rust-primer");

        (row["get"], row["unit"], row["pack"], row["packs to buy"], row["price"]).ShouldBe(("2", "cans", "6", "1", "53.40"));
    }

    [Fact]
    public void The_list_of_steps_holds_every_step_at_its_time()
    {
        var plan = SheetSamples.Roadster();
        var rows = Rows(StepList.Write(plan));

        rows.Count.ShouldBe(plan.Steps.Length);
        foreach (var (step, row) in plan.Steps.Zip(rows))
        {
            row["id"].ShouldBe(step.Id);
            row["start"].ShouldBe(step.Start.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture));
            row["end"].ShouldBe(step.End.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture));
            row["last safe start"].ShouldBe(step.LastSafeStart?.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture) ?? "");
            Number(row["hands-on min"]).ShouldBe(step.HandsMin, 1e-4);
            Number(row["air C"]).ShouldBe(step.AirC, 1e-4);
        }
    }

    [Theory]
    [InlineData("=HYPERLINK(\"x\",\"y\")")]
    [InlineData("+1+1")]
    [InlineData("-2")]
    [InlineData("@SUM(A1)")]
    [InlineData("\t=1")]
    [InlineData("\r=1")]
    [InlineData("\n=1")]
    [InlineData("  =1")]
    [InlineData("\uFF1D1")]
    public void A_cell_that_a_spreadsheet_would_run_stands_behind_an_apostrophe(string name)
    {
        var plan = Named(name);

        Rows(ShoppingList.Write(plan))[0]["item"].ShouldStartWith("'");
        Rows(StepList.Write(plan))[0]["title"].ShouldStartWith("'");
        Rows(StepList.Write(plan))[0]["surfaces"].ShouldStartWith("'");
    }

    [Theory]
    [InlineData("Black, \"satin\"", "Black, \"satin\"")]
    [InlineData("two\r\nlines", "two  lines")]
    [InlineData("Крыло; 内側", "Крыло; 内側")]
    [InlineData("a=b", "a=b")]
    [InlineData("bell\u0007", "bell?")]
    public void Other_names_are_read_back_as_they_were_on_one_line(string name, string read)
    {
        Rows(ShoppingList.Write(Named(name)))[0]["item"].ShouldBe(read);
        Rows(StepList.Write(Named(name)))[0]["title"].ShouldBe(read);
    }

    [Fact]
    public void Frost_stays_a_number()
    {
        var plan = SamplePlan.Weekend();
        var row = Rows(StepList.Write(plan with { Steps = [plan.Steps[0] with { AirC = -3.25 }] }))[0];

        row["air C"].ShouldBe("-3.25");
    }

    private static Plan Named(string name)
    {
        var plan = SamplePlan.Weekend();
        return plan with
        {
            Surfaces = [plan.Surfaces[0] with { Name = name }],
            Steps = [plan.Steps[0] with { Title = name }],
            Supplies = [plan.Supplies[0] with { Name = name }],
        };
    }

    private static List<Dictionary<string, string>> Rows(string text)
    {
        var records = ReadCsv.Of(text);
        records.ShouldAllBe(record => record.Count == records[0].Count);
        return [.. records.Skip(1).Select(record => records[0].Zip(record).ToDictionary(pair => pair.First, pair => pair.Second))];
    }

    private static double Number(string cell) => double.Parse(cell, NumberStyles.Float, CultureInfo.InvariantCulture);
}
