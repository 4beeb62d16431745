using System.Globalization;

namespace CoatPlan.Presets;

/// <summary>Takes apart figures written plainly: a decimal number and, behind it, a unit.</summary>
/// <remarks>
/// Rows are written so, in a handful of units. The reader of people's spellings is asked only about the rest; at a program's start
/// it and the generic code around it would cost more than all else.
/// </remarks>
internal static class PlainFigure
{
    /// <summary>Splits <c>0.79 kg/L</c>; false: not written plainly.</summary>
    /// <param name="text">The text.</param>
    /// <param name="number">The number.</param>
    /// <param name="unit">What stands behind it, trimmed; empty: nothing.</param>
    public static bool Split(string text, out double number, out string unit)
    {
        int end = text.Length > 0 && text[0] == '-' ? 1 : 0;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] == '.')) end++;
        unit = text[end..].Trim();
        return double.TryParse(text.AsSpan(0, end), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);
    }

    /// <summary>Splits <c>50-90 °F</c>; false: not written plainly.</summary>
    /// <param name="text">The text.</param>
    /// <param name="least">The first number.</param>
    /// <param name="most">The second number, not less.</param>
    /// <param name="unit">The unit of both.</param>
    public static bool SplitRange(string text, out double least, out double most, out string unit)
    {
        most = 0;
        unit = "";
        int dash = text.IndexOf('-', 1);
        return Split(dash < 0 ? text : text[..dash], out least, out string own)
            && dash > 0 && own.Length == 0
            && Split(text[(dash + 1)..], out most, out unit)
            && least <= most;
    }

    /// <summary>A duration in minutes, hours or days, to the millisecond; null: not written plainly.</summary>
    /// <param name="text">The text.</param>
    public static Duration? Time(string text)
    {
        const double Longest = 1_000;
        if (!Split(text, out double number, out string unit) || number <= 0 || number > Longest) return null;
        double minutes = unit switch { "min" => 1, "h" => 60, "d" => 24 * 60, _ => 0 };
        return minutes == 0 ? null : Duration.FromMilliseconds((long)Math.Round(number * minutes * 60_000, MidpointRounding.AwayFromZero));
    }
}
