using System.Text.Json;
using CoatPlan.Explanations;

namespace CoatPlan;

/// <summary>An explanation as JSON: what, value, number, formula, source, inputs of the same shape, and the figure's place in the plan where it has one.</summary>
public static class ExplanationJson
{
    private const int Decimals = 6;

    /// <summary>Writes an explanation; the same one gives the same text.</summary>
    public static string Write(Explanation explanation)
    {
        ArgumentNullException.ThrowIfNull(explanation);
        return JsonText.Of(json => Write(json, explanation));
    }

    private static void Write(Utf8JsonWriter json, Explanation explanation)
    {
        if (explanation.Path.Length > 0)
            json.WriteString("path", explanation.Path);
        json.WriteString("what", explanation.What);
        json.WriteString("value", explanation.Value);
        JsonText.Number(json, "number", explanation.Number, Decimals);
        json.WriteString("formula", explanation.Formula);
        json.WriteString("source", explanation.Source);
        JsonText.Each(json, "inputs", explanation.Inputs, input => Write(json, input));
    }
}
