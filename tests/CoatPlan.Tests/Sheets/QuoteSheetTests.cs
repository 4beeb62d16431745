using System.Globalization;
using CoatPlan.Sheets.Content;
using CoatPlan.Tests.Plans;

namespace CoatPlan.Tests.Sheets;

public class QuoteSheetTests
{
    [Fact]
    public void The_columns_on_paper_add_to_the_last_row_and_that_to_the_total()
    {
        var rows = Rows(SheetSamples.Van());

        for (var column = 2; column < 7; column++)
            rows.SkipLast(1).Sum(row => Amount(row[column])).ShouldBe(Amount(rows[^1][column]));
        rows[^1].Skip(2).Take(4).Sum(Amount).ShouldBe(Amount(rows[^1][6]));
        foreach (var row in rows)
            row.Skip(2).Take(4).Sum(Amount).ShouldBe(Amount(row[6]));
    }

    [Fact]
    public void The_amounts_are_the_plans()
    {
        var plan = SheetSamples.Van();
        var quote = plan.Quote!;

        Rows(plan).SkipLast(1).Select(row => (row[0], Amount(row[2]), Amount(row[3]), Amount(row[4]), Amount(row[5]))).ShouldBe(
            quote.Lines.Select(line => (new PlanWords(plan).Names([line.Surface]), line.Labour, line.Materials, line.Markup, line.Tax)));
        QuoteSheet.Of(plan)!.Blocks.OfType<Notice>().Single().Text.ShouldBe(FormattableString.Invariant($"Total {quote.Total:#,0.00} USD"));
    }

    [Fact]
    public void A_primer_for_bare_spots_is_not_sold_for_the_whole_part()
    {
        var coats = Rows(SheetSamples.Van()).Select(row => row[1]).ToArray();

        coats.ShouldContain(text => text.Contains("2 coats of Red oxide rust primer on bare spots; ", StringComparison.Ordinal));
        coats.Single(text => text.StartsWith("2 coats of Adhesion", StringComparison.Ordinal)).ShouldNotContain("bare spots");
    }

    /// <summary>A customer multiplies: the hours on paper times the price on paper are the labour on paper, to the cent.</summary>
    [Theory]
    [InlineData(971, "16 h 11 min of labour at 95.00 USD an hour.")]
    [InlineData(3070, "51 h 10 min of labour at 95.00 USD an hour.")]
    public void The_hours_are_told_to_the_minute_they_are_paid_by(int minutes, string line)
    {
        var van = SheetSamples.Van();
        var plan = van with { Quote = van.Quote! with { LabourH = minutes / 60.0, PerHour = 95 } };

        QuoteSheet.Of(plan)!.Blocks.OfType<Bullets>().SelectMany(bullets => bullets.Items).ShouldContain(line);
    }

    [Fact]
    public void The_hours_on_paper_times_their_price_are_the_labour()
    {
        var quote = SheetSamples.Van().Quote!;
        var minutes = Math.Round(quote.LabourH * 60);

        (quote.LabourH * 60).ShouldBe(minutes, 1e-6);
        quote.Hours.ShouldAllBe(one => Math.Abs((one.H * 60) - Math.Round(one.H * 60)) < 1e-6);
        Math.Round((decimal)minutes * quote.PerHour / 60, 2, MidpointRounding.AwayFromZero).ShouldBe(quote.Labour);
    }

    [Fact]
    public void What_is_not_included_is_said_and_nothing_is_made_up_for_whom_and_how_long()
    {
        var plan = SheetSamples.Van();
        var sheet = QuoteSheet.Of(plan)!;

        sheet.Blocks.OfType<Bullets>().SelectMany(bullets => bullets.Items).Intersect(plan.Quote!.NotIncluded).ShouldBe(plan.Quote!.NotIncluded);
        sheet.Blocks.OfType<Blanks>().SelectMany(blanks => blanks.Labels).ShouldBe(["From", "For", "Vehicle", "Quote no.", "Date", "Good until", "Agreed: name", "Signature", "Date"]);
    }

    [Fact]
    public void No_amount_is_broken_in_two_as_text()
    {
        var lines = SheetSamples.Text(QuoteSheet.Of(SheetSamples.Van())!).Split('\n');
        var sum = Rows(SheetSamples.Van())[^1];

        lines.ShouldContain(line => sum.All(cell => line.Contains(cell, StringComparison.Ordinal)));
        lines.ShouldContain(line => line.Contains("Labour  Materials", StringComparison.Ordinal));
    }

    [Fact]
    public void A_job_without_a_labour_price_has_no_quote() => QuoteSheet.Of(SamplePlan.Weekend() with { Quote = null }).ShouldBeNull();

    private static ImmutableArray<ImmutableArray<string>> Rows(Plan plan) => QuoteSheet.Of(plan)!.Blocks.OfType<Grid>().First().Rows;

    private static decimal Amount(string cell) => decimal.Parse(cell, NumberStyles.Number, CultureInfo.InvariantCulture);
}
