using CoatPlan.Supplies;

namespace CoatPlan.Sheets.Csv;

/// <summary>Everything to have for a job as a table for a spreadsheet: coatings first, then what is used up besides.</summary>
public static class ShoppingList
{
    private const int AmountDecimals = 2;

    private static readonly ImmutableArray<string> Head = ["item", "key", "needed", "get", "unit", "pack", "packs to buy", "price", "currency", "why"];

    /// <summary>Writes the list.</summary>
    /// <param name="plan">The plan.</param>
    public static string Write(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return CsvTable.Write(Head, [.. Coatings(plan), .. Besides(plan)]);
    }

    private static IEnumerable<ImmutableArray<string>> Coatings(Plan plan) => plan.Supplies.Select(supply => ImmutableArray.Create(
        CsvTable.Text(supply.Name),
        CsvTable.Text(supply.Product),
        CsvTable.Number(supply.Cans),
        CsvTable.Number(supply.Buy),
        UnitWords.Behind(supply.Cans, "can"),
        CsvTable.Number(supply.Pack),
        CsvTable.Number(supply.Packs),
        CsvTable.Amount(supply.Price, plan.Currency),
        CurrencyOf(supply.Price, plan),
        CsvTable.Text(supply.CansLow == supply.CansHigh ? "coating" : $"coating; {supply.CansLow} to {supply.CansHigh}")));

    private static IEnumerable<ImmutableArray<string>> Besides(Plan plan) => plan.Consumables.Select(item => ImmutableArray.Create(
        CsvTable.Text(item.Item),
        CsvTable.Text(item.Word),
        CsvTable.Number(Math.Round(UnitWords.In(item.Needed, item.Unit, plan.Units).Amount, AmountDecimals)),
        CsvTable.Number(Math.Round(UnitWords.In(item.Amount, item.Unit, plan.Units).Amount, AmountDecimals)),
        CsvTable.Text(UnitWords.Behind(item.Needed, UnitWords.In(item.Needed, item.Unit, plan.Units).Unit)),
        CsvTable.Number(item.Pack),
        CsvTable.Number(item.Packs),
        CsvTable.Amount(item.Price, plan.Currency),
        CurrencyOf(item.Price, plan),
        CsvTable.Text(item.Why)));

    private static string CurrencyOf(decimal? price, Plan plan) => price is null ? "" : CsvTable.Text(plan.Currency);
}
