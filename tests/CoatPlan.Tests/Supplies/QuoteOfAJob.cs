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
    public void Paint_without_a_price_is_named_as_left_out()
    {
        var quote = SupplySamples.Quote(TwoPanels, Work(100, 50), Duration.Zero, SupplySamples.Can(price: null))!;

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
        SupplySamples.Quote(job, Work(minutes.First, minutes.Second), Duration.FromMinutes(common));

    private static ImmutableArray<SurfaceHours> Work(double first, double second) =>
        [new("a", Duration.FromMinutes(first)), new("b", Duration.FromMinutes(second))];
}
