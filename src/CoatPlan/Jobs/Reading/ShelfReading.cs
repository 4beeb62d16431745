using CoatPlan.Problems;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads <c>have</c>, <c>prices</c> and <c>checks</c>.</summary>
internal static class ShelfReading
{
    /// <summary>Reads <c>have</c> in the order of the file.</summary>
    public static ImmutableArray<HaveEntry> Have(MapReading job, IReadOnlySet<string> products)
    {
        var have = ImmutableArray.CreateBuilder<HaveEntry>();
        var consumables = job.Context.Vocabulary.Consumables;
        foreach (var entry in job.Entries("have"))
        {
            string key = entry.Key.Text;
            bool isProduct = products.Contains(key);
            if (!isProduct)
            {
                if (JobWords.Find(key, consumables) is { } known) key = known;
                else if (!consumables.IsEmpty && !job.Context.Problems.IsFull) job.Context.Problems.Add(entry.Key.Mark, Sentences.UnknownName("product or consumable", key, products.Concat(consumables)));
            }

            if (AmountReading.Read(entry.Value, $"`{key}`", job.Context) is { } amount)
            {
                have.Add(new() { Key = key, IsProduct = isProduct, Amount = amount, Mark = entry.Key.Mark });
            }
        }

        return have.ToImmutable();
    }

    /// <summary>Reads <c>prices</c>; null: absent.</summary>
    public static Prices? Prices(MapReading? prices) => prices is null ? null : new()
    {
        LabourPerHour = prices.MoneyPerHour("labour"),
        Markup = prices.Ratio("markup") ?? UnitsNet.Ratio.Zero,
        Tax = prices.Ratio("tax") ?? UnitsNet.Ratio.Zero,
        TaxOn = prices.Word<TaxBase>("tax-on") ?? TaxBase.Materials,
        Currency = Currency(prices) ?? JobDefaults.Currency,
        Consumables = [.. prices.Entries("consumables").Select(entry => Consumable(entry, prices.Context)).OfType<ConsumablePrice>()],
        Mark = prices.Mark,
    };

    private static ConsumablePrice? Consumable(Yaml.MapEntry entry, ReadingContext context)
    {
        if (MapReading.Of(entry.Value, JobKeys.ConsumablePrice, context) is not { } map) return null;
        var price = map.Money("price");
        var pack = map.Whole("pack");
        return price is null ? null : new() { Key = entry.Key.Text, Price = price.Value, Pack = pack, Mark = entry.Key.Mark };
    }

    /// <summary>Reads <c>checks</c>; null: absent.</summary>
    public static Checks? Checks(MapReading? checks)
    {
        if (checks is null) return null;
        var pressures = checks.Find("cylinder-pressures") is { } list ? Values.Items(list, "`cylinder-pressures`", "a list of pressures", checks.Context) : [];
        return new()
        {
            CylinderPressures = [.. pressures.Select(item => Values.Quantity(
                item, "a cylinder pressure", Quantities.QuantityText.Pressure, v => v.Kilopascals, JobRanges.Pressure, Quantities.Dimension.Pressure, checks.Context))
                .OfType<UnitsNet.Pressure>()],
            PressureTest = Test(checks.Map("pressure-test")),
            Mark = checks.Mark,
        };
    }

    private static PressureTest? Test(MapReading? test)
    {
        if (test is null) return null;
        var cap = test.Pressure("cap");
        var start = test.Pressure("start");
        var end = test.Pressure("end");
        var after = test.Duration("after");
        if (start is null || end is null) return null;
        return new() { Cap = cap, Start = start.Value, End = end.Value, After = after, Mark = test.Mark };
    }

    private static string? Currency(MapReading prices)
    {
        if (prices.Text("currency") is not { } text) return null;
        string code = text.ToUpperInvariant();
        if (code.Length == 3 && code.All(char.IsAsciiLetterUpper)) return code;
        prices.Note("currency", Sentences.WrongKind("`currency`", $"`{text}`", "an ISO 4217 code such as `USD`"));
        return null;
    }
}
