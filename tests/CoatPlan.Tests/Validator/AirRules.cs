using System.Text.Json;

namespace CoatPlan.Tests.Validator;

/// <summary>Air, respirator, cautions and the quote: there, finite and adding up.</summary>
internal static class AirRules
{
    private const double RoomSlack = 0.005;
    private const double Cent = 0.02;

    public static IEnumerable<Violation> Check(PlanUnderTest test) =>
        [.. Numbers(test), .. Steps(test), .. Respirator(test), .. Cautions(test), .. Quote(test)];

    private static IEnumerable<Violation> Numbers(PlanUnderTest test)
    {
        var air = test.Plan.Root.GetProperty("air");
        foreach (double value in All(air).Where(value => !double.IsFinite(value) || value < 0))
        {
            yield return new Violation(Rules.AirNumbers, "air", $"{value} is no amount");
        }

        if (test.Job.RoomM3 is { } room && !(Math.Abs((Amount(air, "roomM3") ?? double.NaN) - room) <= RoomSlack * room))
        {
            yield return new Violation(Rules.AirNumbers, "air.roomM3", $"the room of the job has {room} m³");
        }
    }

    private static IEnumerable<Violation> Steps(PlanUnderTest test)
    {
        string[] listed = [.. test.Plan.Root.GetProperty("air").GetProperty("byStep").EnumerateArray().Select(row => row.GetProperty("step").GetString()!)];
        foreach (string id in listed.Where(id => test.Step(id) is null))
        {
            yield return new Violation(Rules.UnknownReference, "air.byStep", $"names a step '{id}' that is not there");
        }

        foreach (var step in test.Coats.Where(step => step.Spray && !test.IsDone(step) && !listed.Contains(step.Id) && !LacksData(test, step)))
        {
            yield return new Violation(Rules.AirStepMissing, step.Id, "is sprayed and has no row of air");
        }
    }

    /// <summary>What nobody knows the solvents of has no figures, and the plan warns of it.</summary>
    private static bool LacksData(PlanUnderTest test, PlannedStep step) =>
        test.Plan.Root.GetProperty("warnings").EnumerateArray().Any(warning =>
            warning.GetProperty("code").GetString() == "data-missing" && warning.GetProperty("product").GetString() == step.Product);

    private static IEnumerable<Violation> Respirator(PlanUnderTest test)
    {
        var respirator = test.Plan.Root.GetProperty("respirator");
        string kind = respirator.GetProperty("kind").GetString()!.Trim();
        if (test.Plan.Steps.Any(step => step.Spray) && (kind.Length == 0 || kind.Equals("none", StringComparison.OrdinalIgnoreCase) || respirator.GetProperty("why").GetArrayLength() == 0))
        {
            yield return new Violation(Rules.RespiratorMissing, "respirator", "something is sprayed and no respirator with its reason is named");
        }
    }

    private static IEnumerable<Violation> Cautions(PlanUnderTest test)
    {
        var cautions = test.Plan.Root.GetProperty("cautions").EnumerateArray().ToArray();
        if (test.Plan.Steps.Length > 0 && cautions.Length == 0)
        {
            yield return new Violation(Rules.CautionMissing, "cautions", "there is none");
        }

        foreach (var caution in cautions)
        {
            if (((string[])["code", "text", "source"]).Any(key => string.IsNullOrWhiteSpace(caution.GetProperty(key).GetString())))
            {
                yield return new Violation(Rules.CautionMissing, "cautions", $"{caution} lacks its code, text or source");
            }
        }
    }

    private static IEnumerable<Violation> Quote(PlanUnderTest test)
    {
        var quote = test.Plan.Root.GetProperty("quote");
        if (quote.ValueKind == JsonValueKind.Null)
        {
            yield break;
        }

        foreach (var violation in quote.TryGetProperty("hours", out _) ? QuoteLines(quote) : [])
        {
            yield return violation;
        }

        double Of(string key) => Amount(quote, key)!.Value;
        double sum = Of("labour") + Of("materials") + Of("markup") + Of("tax");
        if (Math.Abs(sum - Of("total")) > Cent || Of("low") > Of("total") + Cent || Of("high") < Of("total") - Cent)
        {
            yield return new Violation(Rules.QuoteSum, "quote", $"parts make {sum}, total {Of("total")} between {Of("low")} and {Of("high")}");
        }
    }

    /// <summary>Every column of the lines adds to its sum, the parts of materials to them, the hours of each kind of work to the hours.</summary>
    private static IEnumerable<Violation> QuoteLines(JsonElement quote)
    {
        decimal Of(JsonElement item, string key) => item.GetProperty(key).GetDecimal();
        JsonElement[] lines = [.. quote.GetProperty("lines").EnumerateArray()];
        foreach (string column in (string[])["labour", "materials", "markup", "tax", "total"])
        {
            if (lines.Sum(line => Of(line, column)) != Of(quote, column))
            {
                yield return new Violation(Rules.QuoteSum, $"quote.lines.{column}", $"lines make {lines.Sum(line => Of(line, column))}, the quote says {Of(quote, column)}");
            }
        }

        if (Of(quote, "paint") + Of(quote, "consumables") != Of(quote, "materials"))
        {
            yield return new Violation(Rules.QuoteSum, "quote.materials", "is not paint and consumables together");
        }

        double hours = quote.GetProperty("hours").EnumerateArray().Sum(one => one.GetProperty("h").GetDouble());
        if (Math.Abs(hours - quote.GetProperty("labourH").GetDouble()) > 0.02)
        {
            yield return new Violation(Rules.QuoteSum, "quote.hours", $"make {hours} h");
        }
    }

    private static double? Amount(JsonElement item, string key) =>
        item.GetProperty(key) is { ValueKind: JsonValueKind.Number } value ? value.GetDouble() : null;

    private static IEnumerable<double> All(JsonElement item) => item.ValueKind switch
    {
        JsonValueKind.Number => [item.GetDouble()],
        JsonValueKind.Object => item.EnumerateObject().SelectMany(property => All(property.Value)),
        JsonValueKind.Array => item.EnumerateArray().SelectMany(All),
        _ => [],
    };
}
