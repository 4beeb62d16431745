using System.Text.Json;

namespace CoatPlan;

/// <summary>Two plans side by side as JSON for scripts.</summary>
public static class PlanComparisonJson
{
    private const int ShareDecimals = 4;
    private const int LelDecimals = 6;
    private const int HourDecimals = 2;

    /// <summary>Writes a comparison; the same comparison gives the same text.</summary>
    /// <param name="comparison">The comparison.</param>
    public static string Write(PlanComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return JsonText.Of(json =>
        {
            JsonText.Each(json, "plans", [comparison.First, comparison.Second], plan => Write(json, plan));
            json.WriteStartObject("change");
            JsonText.Number(json, "finishMovesMin", comparison.FinishMovesMin, 0);
            json.WriteNumber("cans", comparison.MoreCans);
            JsonText.Money(json, "price", comparison.MorePrice);
            JsonText.Money(json, "quote", comparison.MoreQuote);
            JsonText.Texts(json, "newWarnings", comparison.NewWarnings);
            JsonText.Texts(json, "goneWarnings", comparison.GoneWarnings);
            json.WriteEndObject();
        });
    }

    private static void Write(Utf8JsonWriter json, ComparedPlan plan)
    {
        json.WriteString("name", plan.Name);
        json.WriteString("job", plan.Job);
        JsonText.Time(json, "finish", plan.Finish);
        JsonText.Time(json, "inService", plan.InService);
        json.WriteBoolean("meets", plan.Meets);
        JsonText.Number(json, "handsH", plan.HandsH, HourDecimals);
        json.WriteNumber("days", plan.Days);
        json.WriteNumber("cans", plan.Cans);
        json.WriteNumber("buy", plan.Buy);
        JsonText.Money(json, "price", plan.Price);
        JsonText.Money(json, "quote", plan.Quote);
        json.WriteString("currency", plan.Currency);
        JsonText.Number(json, "peakMixtureRatio", plan.PeakMixtureRatio, ShareDecimals);
        JsonText.Number(json, "peakLelRatio", plan.PeakLelRatio, LelDecimals);
        JsonText.Number(json, "twaMixtureRatio", plan.TwaMixtureRatio, ShareDecimals);
        json.WriteString("respirator", plan.Respirator);
        JsonText.Texts(json, "warnings", plan.Warnings);
        JsonText.Texts(json, "reasons", plan.Reasons);
    }
}
