using CoatPlan.Plans;
using CoatPlan.Quantities;

namespace CoatPlan.Sheets.Content;

/// <summary>The quote, for a customer to read, to strike lines from and to sign.</summary>
public static class QuoteSheet
{
    /// <summary>What the sheet says; null where the job names no labour price.</summary>
    /// <param name="plan">The plan.</param>
    public static Sheet? Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Quote is not { } quote)
            return null;

        var words = new PlanWords(plan);
        return new Sheet(
            "quote",
            "Quote",
            plan.Job,
            [
                new Blanks(["From", "For"]),
                new Blanks(["Vehicle", "Quote no."]),
                new Blanks(["Date", "Good until"]),
                new Notice($"Total {words.Money(quote.Total)}"),
                new Paragraph($"Between {words.Money(quote.Low)} where all goes well and {words.Money(quote.High)} where little does."),
                .. Lines(quote, plan, words),
                .. Hours(quote, words),
                .. Rests(quote, plan, words),
                new Blanks(["Agreed: name", "Signature", "Date"]),
                .. Deferral.Of(plan),
            ]);
    }

    private static IEnumerable<Block> Lines(PlanQuote quote, Plan plan, PlanWords words)
    {
        yield return new Heading($"The work, in {quote.Currency}");
        yield return new Grid(
            [
                new Column("Part", 3), new Column("Coats", 4), new Column("Labour", 1.6, true), new Column("Materials", 1.6, true), new Column("Markup", 1.5, true),
                new Column("Tax", 1.3, true), new Column("Together", 1.8, true),
            ],
            [
                .. quote.Lines.Select(line => ImmutableArray.Create(
                    words.Names([line.Surface]),
                    words.Coats(line.Surface),
                    words.Figure(line.Labour),
                    words.Figure(line.Materials),
                    words.Figure(line.Markup),
                    words.Figure(line.Tax),
                    words.Figure(line.Total))),
                ["Total", "", words.Figure(quote.Labour), words.Figure(quote.Materials), words.Figure(quote.Markup), words.Figure(quote.Tax), words.Figure(quote.Total)],
            ])
        {
            EndsInSum = true,
        };
        yield return new Paragraph("Each line carries its share of the work for the whole job, so that a part can be dropped. Markup is on materials.");
    }

    private static IEnumerable<Block> Hours(PlanQuote quote, PlanWords words)
    {
        yield return new Heading("What the labour and the materials are");
        yield return new Bullets(
        [
            $"{HoursOf(quote.LabourH)} of labour at {words.Money(quote.PerHour)} an hour.",
            .. quote.Hours.IsEmpty ? [] : (string[])[$"Of these hours: {string.Join(", ", quote.Hours.Select(one => $"{one.Operation.Replace('-', ' ')} {HoursOf(one.H)}"))}."],
            $"Paint {words.Money(quote.Paint)}, what is used up besides {words.Money(quote.Consumables)}.",
        ]);
    }

    private static IEnumerable<Block> Rests(PlanQuote quote, Plan plan, PlanWords words)
    {
        yield return new Heading("What it rests on");
        yield return new Bullets(
        [
            .. plan.Surfaces.Select(surface => $"{PlanWords.Name(surface)}: {surface.Material}, {words.Area(surface.AreaM2)} each; found as: {string.Join(", ", surface.Condition.Prepend(surface.Finish))}."),
            When(plan),
        ]);
        if (quote.NotIncluded.IsEmpty)
            yield break;

        yield return new Heading("Not in the price");
        yield return new Bullets(quote.NotIncluded);
    }

    // For somebody who has no plan in hand: days in full, and what the last of them means.
    private static string When(Plan plan)
    {
        if (plan.Finish is not { } finish)
            return PlanWords.Ends(plan);

        var full = plan.InService is { } service ? $" The last film takes full service from {PlanWords.Day(service.Date)}." : "";
        return $"Planned from {PlanWords.Day(plan.Start.Date)}, {PlanWords.Clock(plan.Start)}, to {PlanWords.Day(finish.Date)}, {PlanWords.Clock(finish)}, with everything back in place.{full}";
    }

    private static string HoursOf(double hours) => QuantityFormat.Hours(Duration.FromHours(hours));
}
