using CoatPlan.Plans;
using CoatPlan.Supplies;

namespace CoatPlan.Composition;

/// <summary>A quote as the plan shows it.</summary>
internal static class PlanQuotes
{
    public static PlanQuote? Of(Quote? quote) => quote is null
        ? null
        : new PlanQuote(
            quote.Currency,
            quote.LabourHours,
            quote.Labour,
            quote.Materials,
            quote.Markup,
            quote.Tax,
            quote.Total,
            quote.Low,
            quote.High,
            [.. quote.Lines.Select(Of)],
            quote.NotIncluded)
        {
            PerHour = quote.PerHour,
            Paint = quote.Paint,
            Consumables = quote.Consumables,
            Hours = [.. quote.Hours.Select(one => new PlanHours(one.Operation, one.Hours))],
        };

    private static PlanQuoteLine Of(QuoteLine line) => new(line.Surface, line.Labour, line.Materials) { Markup = line.Markup, Tax = line.Tax };
}
