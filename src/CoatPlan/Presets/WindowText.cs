using CoatPlan.Jobs;
using CoatPlan.Quantities;

namespace CoatPlan.Presets;

/// <summary>Reads a recoat window: <c>10 min-1 h</c>, <c>after 24 h</c> or <c>within 1 h</c>.</summary>
internal static class WindowText
{
    private const string After = "after ";
    private const string Within = "within ";

    /// <summary>The window of a text; null: it is none.</summary>
    public static RecoatWindow? Read(string text)
    {
        if (text.StartsWith(After, StringComparison.Ordinal)) return Time(text[After.Length..]) is { } from ? new(from, null, false) : null;
        if (text.StartsWith(Within, StringComparison.Ordinal)) return Time(text[Within.Length..]) is { } to ? new(null, to, true) : null;
        int dash = text.IndexOf('-', StringComparison.Ordinal);
        if (dash > 0 && PlainFigure.Time(text[..dash]) is { } first && PlainFigure.Time(text[(dash + 1)..]) is { } last && first < last) return new(first, last, false);
        var range = QuantityText.DurationRange(text);
        return range is { Ok: true, Value: { Least: { } least, Most: { } most } } && least < most ? new(least, most, false) : null;
    }

    private static Duration? Time(string text)
    {
        if (PlainFigure.Time(text) is { } time) return time;
        var reading = QuantityText.Duration(text);
        return reading.Ok ? reading.Value : null;
    }
}
