using System.Globalization;
using CoatPlan.Plans;

namespace CoatPlan.Sheets.Content;

/// <summary>The shopping list: what to buy and what is on the shelf already.</summary>
public static class ShoppingSheet
{
    /// <summary>What the sheet says.</summary>
    /// <param name="plan">The plan.</param>
    public static Sheet Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new Sheet("shopping-list", "Shopping list", plan.Job, [.. ToBuy(plan), .. OnTheShelf(plan), .. Deferral.Of(plan)]);
    }

    private static IEnumerable<Block> ToBuy(Plan plan)
    {
        var words = new PlanWords(plan);
        var cans = plan.Supplies.Where(supply => supply.Buy > 0).Select(supply => Row(supply, words)).ToImmutableArray();
        var besides = plan.Consumables.Where(item => item.Amount > 0).Select(item => Row(item, words)).ToImmutableArray();
        if (cans.IsEmpty && besides.IsEmpty)
        {
            yield return new Paragraph("Nothing to buy: the shelf holds what the plan takes.");
            yield break;
        }

        if (!cans.IsEmpty)
        {
            yield return new Heading("To buy: coatings");
            yield return new Grid([new Column("", 0.5), new Column("Coating", 4.4), new Column("Cans", 2), new Column("Price", 1.6, true), new Column("Needed in all", 3)], cans);
        }

        if (!besides.IsEmpty)
        {
            yield return new Heading("To buy: used up besides");
            yield return new Grid([new Column("", 0.4), new Column("Item", 4.1), new Column("Amount", 2.8), new Column("Price", 1.5, true), new Column("What for", 4.8)], besides);
        }

        yield return new Paragraph(Sum(plan, words));
    }

    // A price that is not known leaves room to write it in; the sum says how many there are.
    private static ImmutableArray<string> Row(PlanSupply supply, PlanWords words) =>
    [
        PlanWords.Tick,
        supply.Name,
        supply is { Pack: > 1, Packs: > 0 } ? $"{Cans(supply.Buy)}: {Packs(supply.Packs)} of {Count(supply.Pack)}" : Cans(supply.Buy),
        supply.Price is { } price ? words.Money(price) : "",
        supply.CansLow == supply.CansHigh ? Count(supply.Cans) : $"{Count(supply.Cans)} ({Count(supply.CansLow)} to {Count(supply.CansHigh)})",
    ];

    private static ImmutableArray<string> Row(PlanConsumable item, PlanWords words) =>
    [
        PlanWords.Tick,
        item.Item,
        item switch
        {
            { Pack: > 1, Packs: > 0 } => $"{words.Amount(item.Amount, item.Unit)}: {Packs(item.Packs)} of {Count(item.Pack)}",
            { Packs: 0, Pack: > 1 } => $"{words.Amount(item.Amount, item.Unit)}, out of a pack above",
            _ => words.Amount(item.Amount, item.Unit),
        },
        item.Price is { } price && item.Packs > 0 ? words.Money(price) : "",
        item.Why,
    ];

    private static string Sum(Plan plan, PlanWords words)
    {
        var prices = plan.Supplies.Where(supply => supply.Buy > 0).Select(supply => supply.Price)
            .Concat(plan.Consumables.Where(item => item.Amount > 0).Select(item => item.Price))
            .ToImmutableArray();
        var unknown = prices.Count(price => price is null);
        var left = unknown switch
        {
            0 => ".",
            1 => "; the price of 1 line is not known.",
            _ => $"; the prices of {Count(unknown)} lines are not known.",
        };
        return unknown == prices.Length ? "No price is known." : $"Known prices add to {words.Money(prices.Sum() ?? 0)}{left}";
    }

    private static IEnumerable<Block> OnTheShelf(Plan plan)
    {
        var words = new PlanWords(plan);
        ImmutableArray<string> shelf =
        [
            .. plan.Supplies.Where(supply => supply.Buy < supply.Cans).Select(supply => $"{supply.Name}: {Count(supply.Cans - supply.Buy)} of {Cans(supply.Cans)}"),
            .. plan.Consumables.Where(item => item.Needed > item.Amount).Select(item => $"{item.Item}: {words.Number(item.Needed - item.Amount, item.Unit)} of {words.Amount(item.Needed, item.Unit)}"),
        ];
        if (shelf.IsEmpty)
            yield break;

        yield return new Heading("On the shelf: look whether it is");
        yield return new Bullets(shelf);
    }

    private static string Cans(int count) => count == 1 ? "1 can" : $"{Count(count)} cans";

    private static string Packs(int count) => count == 1 ? "1 pack" : $"{Count(count)} packs";

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
