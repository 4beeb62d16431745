using CoatPlan.Jobs;
using CoatPlan.Supplies;
using CoatPlan.Tests.Paint;
using CsCheck;
using UnitsNet;

namespace CoatPlan.Tests.Supplies;

public sealed class QuoteOfAJob
{
    private static readonly Job TwoPanels =
        PaintSamples.Job([PaintSamples.Panel(1.5, "a"), PaintSamples.Panel(0.5, "b")]) with { Prices = SupplySamples.Prices };

    [Fact]
    public void A_quote_worked_by_hand()
    {
        // 5 cans at 9.50 are 47.50, a quarter more 11.875 → 11.88; 8.25 % of 59.38 is 4.898… → 4.90.
        // 100 + 50 min on the panels and 30 for the job are 3 h at 85: 255.00. Together 319.28.
        // The job's half hour is shared 2 to 1, so the lines of labour are 170.00 and 85.00.
        var quote = Of(TwoPanels, minutes: (100, 50), common: 30)!;

        quote.Currency.ShouldBe("USD");
        quote.LabourHours.ShouldBe(3, 1e-9);
        (quote.Labour, quote.Materials, quote.Markup, quote.Tax, quote.Total).ShouldBe((255.00m, 47.50m, 11.88m, 4.90m, 319.28m));
        quote.Lines.Select(line => (line.Labour, line.Materials)).ShouldBe([(170.00m, 35.63m), (85.00m, 11.87m)]);
        quote.Low.ShouldBeLessThan(quote.Total);
        quote.High.ShouldBeGreaterThan(quote.Total);
    }

    [Fact]
    public void A_whole_quote_worked_by_hand_with_what_is_used_up()
    {
        // 4 m² of coats with cans of 1 m² and 10 % reserve are 4.4, so 5 cans; 2 are on the shelf: 3 at 9.50 are 28.50.
        // Tape at 6.40 and a box of gloves at 12.60 are 19.00: materials 47.50, a quarter more 11.875 → 11.88, 8.25 % of 59.38 is 4.898… → 4.90.
        // 72 min of scuffing, 48 of masking, 60 of coats and 30 for the job are 3.5 h at 85.00: 297.50. Together 361.78.
        // Panel a: 1.5 of 2 m² of paint, 21.375 → 21.38 (28.50 less 7.12); 108 of 180 min, so 0.6 of 297.50 = 178.50 and of 19.00 = 11.40: materials 32.78.
        // Panel b: 7.12 + 7.60 = 14.72; labour 119.00. Markup 11.88 × 32.78 / 47.50 = 8.198… → 8.20 and 3.68; tax 4.90 × 40.98 / 59.38 = 3.381… → 3.38 and 1.52.
        var job = TwoPanels with { Have = SupplySamples.Have("black", 2) };
        ImmutableArray<WorkHours> work =
        [
            new(null, "photograph", Duration.FromMinutes(30)), new("a", "scuff", Duration.FromMinutes(54)), new("b", "scuff", Duration.FromMinutes(18)),
            new("a", "mask", Duration.FromMinutes(24)), new("b", "mask", Duration.FromMinutes(24)),
            new("a", "coat", Duration.FromMinutes(30)), new("b", "coat", Duration.FromMinutes(30)),
        ];

        var quote = SupplySamples.Quote(job, work, null, SupplySamples.Need("tape", 6.40m), SupplySamples.Need("gloves", 12.60m))!;

        quote.Hours.Select(one => (one.Operation, Math.Round(one.Hours, 9))).ShouldBe([("photograph", 0.5), ("scuff", 1.2), ("mask", 0.8), ("coat", 1)]);
        (quote.Paint, quote.Consumables, quote.Materials).ShouldBe((28.50m, 19.00m, 47.50m));
        (quote.Labour, quote.Markup, quote.Tax, quote.Total).ShouldBe((297.50m, 11.88m, 4.90m, 361.78m));
        quote.Lines.Select(line => (line.Surface, line.Labour, line.Materials, line.Markup, line.Tax, line.Total)).ShouldBe(
        [
            ("a", 178.50m, 32.78m, 8.20m, 3.38m, 222.86m),
            ("b", 119.00m, 14.72m, 3.68m, 1.52m, 138.92m),
        ]);

        // A quarter less time is 223.125 → 223.13, a quarter more 371.875 → 371.88. Of 5 cans the least that covers a tenth of the draws is 4: two to buy,
        // 19.00 + 19.00 and its markup 9.50, tax 8.25 % of 47.50 is 3.92; the most is 5, as bought.
        (quote.Low, quote.High).ShouldBe((223.13m + 38.00m + 9.50m + 3.92m, 371.88m + 47.50m + 11.88m + 4.90m));
    }

    /// <summary>Hands a quarter slower, 3 h 45 min at 85, and the cans that cover nine draws of ten.</summary>
    [Fact]
    public void The_highest_total_counts_slow_hands_and_the_high_number_of_cans()
    {
        var job = PaintSamples.Job([PaintSamples.Panel(15, "a"), PaintSamples.Panel(5, "b")])
            with { Prices = new Prices { LabourPerHour = 85, Markup = Ratio.Zero, Tax = Ratio.Zero } };
        var demand = SupplySamples.Supplies(job)[0].Demand;

        var quote = Of(job, minutes: (100, 50), common: 30)!;

        demand.CansHigh.ShouldBeGreaterThan(demand.Cans);
        quote.High.ShouldBe(318.75m + (demand.CansHigh * 9.50m));
    }

    [Fact]
    public void What_is_used_up_without_a_price_is_named_as_left_out()
    {
        var some = SupplySamples.Quote(TwoPanels, Work(100, 50, 0), null, SupplySamples.Need("tape", 6.40m), SupplySamples.Need("tack cloth", null))!;
        var none = SupplySamples.Quote(TwoPanels, Work(100, 50, 0), null, SupplySamples.Need("tape", null))!;
        var all = SupplySamples.Quote(TwoPanels, Work(100, 50, 0), null, SupplySamples.Need("tape", 6.40m))!;

        some.Consumables.ShouldBe(6.40m);
        some.NotIncluded[0].ShouldBe("Used up besides paint and without a price in the job file: tack cloth.");
        none.NotIncluded[0].ShouldStartWith("What is used up besides paint");
        all.NotIncluded.ShouldAllBe(left => !left.StartsWith("Used up", StringComparison.Ordinal) && !left.StartsWith("What is used", StringComparison.Ordinal));
    }

    [Fact]
    public void Tax_on_all_takes_labour_in() =>
        // 8.25 % of 255.00 + 47.50 + 11.88.
        Of(TwoPanels with { Prices = SupplySamples.Prices with { TaxOn = TaxBase.All } }, (100, 50), 30)!.Tax.ShouldBe(25.94m);

    [Fact]
    public void No_price_of_labour_no_quote()
    {
        Of(TwoPanels with { Prices = null }, (100, 50), 30).ShouldBeNull();
        Of(TwoPanels with { Prices = SupplySamples.Prices with { LabourPerHour = null } }, (100, 50), 30).ShouldBeNull();
    }

    [Fact]
    public void A_currency_without_cents_has_none()
    {
        var quote = Of(TwoPanels with { Prices = SupplySamples.Prices with { Currency = "JPY", LabourPerHour = 8555 } }, (100, 51), 29)!;

        quote.Lines.ShouldAllBe(line => decimal.IsInteger(line.Total));
        quote.Lines.Sum(line => line.Total).ShouldBe(quote.Total);
    }

    [Fact]
    public void A_currency_with_thousandths_keeps_them()
    {
        // 180 min at 8.555 are 25.665; 47.5 of paint and a quarter more are 59.375, 8.25 % of them 4.898….
        var quote = Of(TwoPanels with { Prices = SupplySamples.Prices with { Currency = "KWD", LabourPerHour = 8.555m } }, (100, 50), 30)!;

        (quote.Labour, quote.Markup, quote.Tax, quote.Total).ShouldBe((25.665m, 11.875m, 4.898m, 89.938m));
        quote.Lines.Sum(line => line.Total).ShouldBe(quote.Total);
    }

    // ISO 4217: no minor unit, hundredths, thousandths. Grouping and point are the same on every machine.
    [Theory]
    [InlineData("JPY", "1,593 JPY")]
    [InlineData("USD", "1,592.84 USD")]
    [InlineData("KWD", "1,592.840 KWD")]
    public void Money_is_written_with_the_digits_of_its_currency(string currency, string written)
    {
        var before = System.Globalization.CultureInfo.CurrentCulture;
        try
        {
            System.Globalization.CultureInfo.CurrentCulture = System.Globalization.CultureInfo.GetCultureInfo("de-DE");
            MinorUnits.Write(1592.84m, currency).ShouldBe(written);
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void More_on_the_shelf_never_raises_the_bill() =>
        Gen.Select(Gen.Double[0, 6], Gen.Double[0, 4], Gen.Int[1, 6], Gen.Int[0, 2]).Sample((have, more, pack, currency) =>
        {
            var job = TwoPanels with { Prices = SupplySamples.Prices with { Currency = new[] { "USD", "JPY", "KWD" }[currency] } };
            var little = SupplySamples.Quote(job with { Have = SupplySamples.Have("black", have) }, Work(100, 50, 30), SupplySamples.Can(pack: pack))!;
            var much = SupplySamples.Quote(job with { Have = SupplySamples.Have("black", have + more) }, Work(100, 50, 30), SupplySamples.Can(pack: pack))!;
            return much.Total <= little.Total && much.Low <= little.Low && much.High <= little.High;
        }, iter: 60);

    [Fact]
    public void Paint_without_a_price_is_named_as_left_out()
    {
        var quote = SupplySamples.Quote(TwoPanels, Work(100, 50, 0), SupplySamples.Can(price: null))!;

        quote.Materials.ShouldBe(0);
        quote.NotIncluded[0].ShouldContain("without a price");
    }

    [Fact]
    public void Every_column_adds_to_its_sum_and_the_sums_to_the_total() =>
        Gen.Select(Gen.Double[0, 500], Gen.Double[0, 500], Gen.Double[0, 300], Gen.Int[0, 20000], Gen.Int[0, 60], Gen.Int[0, 25]).Sample(
            (first, second, common, cents, markup, tax) =>
            {
                var prices = new Prices
                {
                    LabourPerHour = cents / 100m,
                    Markup = Ratio.FromPercent(markup),
                    Tax = Ratio.FromPercent(tax),
                    TaxOn = cents % 2 == 0 ? TaxBase.All : TaxBase.Materials,
                };
                var quote = Of(TwoPanels with { Prices = prices }, (first, second), common)!;
                return quote.Lines.Sum(line => line.Labour) == quote.Labour && quote.Lines.Sum(line => line.Materials) == quote.Materials
                    && quote.Lines.Sum(line => line.Markup) == quote.Markup && quote.Lines.Sum(line => line.Tax) == quote.Tax
                    && quote.Lines.Sum(line => line.Total) == quote.Total && quote.Low <= quote.Total && quote.Total <= quote.High;
            }, iter: 60);

    [Fact]
    public void What_is_left_over_goes_where_most_was_cut_off()
    {
        MinorUnits.Share(1.00m, [1, 1, 1], "USD").ShouldBe([0.34m, 0.33m, 0.33m]);
        MinorUnits.Share(0.05m, [1, 2], "USD").ShouldBe([0.02m, 0.03m]);
        MinorUnits.Share(0.03m, [0, 0], "USD").ShouldBe([0.02m, 0.01m]);
        MinorUnits.Share(7m, [1, 1], "JPY").ShouldBe([4m, 3m]);
    }

    private static Quote? Of(Job job, (double First, double Second) minutes, double common) =>
        SupplySamples.Quote(job, Work(minutes.First, minutes.Second, common));

    private static ImmutableArray<WorkHours> Work(double first, double second, double common) =>
        [new("a", "scuff", Duration.FromMinutes(first)), new("b", "scuff", Duration.FromMinutes(second)), new(null, "photograph", Duration.FromMinutes(common))];
}
