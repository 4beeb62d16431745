using System.Globalization;
using System.Text.RegularExpressions;

namespace CoatPlan.Tests.Validator;

/// <summary>Quantities of a job file, read apart from the program; null where the text is none that this reader knows.</summary>
internal static partial class Reading
{
    private static readonly Dictionary<string, double> s_minutes = new(StringComparer.OrdinalIgnoreCase)
    {
        ["s"] = 1 / 60.0, ["min"] = 1, ["mins"] = 1, ["minute"] = 1, ["minutes"] = 1, ["h"] = 60, ["hr"] = 60, ["hrs"] = 60, ["hour"] = 60, ["hours"] = 60,
        ["d"] = 1440, ["day"] = 1440, ["days"] = 1440, ["wk"] = 10080, ["week"] = 10080, ["weeks"] = 10080,
    };

    private static readonly Dictionary<string, double> s_squareMetres = new(StringComparer.OrdinalIgnoreCase)
    {
        ["ft2"] = 0.09290304, ["sqft"] = 0.09290304, ["in2"] = 0.00064516, ["sqin"] = 0.00064516, ["m2"] = 1, ["sqm"] = 1, ["cm2"] = 1e-4, ["mm2"] = 1e-6,
        ["yd2"] = 0.83612736, ["sqyd"] = 0.83612736, ["dm2"] = 1e-2,
    };

    private static readonly Dictionary<string, double> s_metres = new(StringComparer.OrdinalIgnoreCase)
    {
        ["ft"] = 0.3048, ["'"] = 0.3048, ["in"] = 0.0254, ["\""] = 0.0254, ["m"] = 1, ["cm"] = 0.01, ["mm"] = 0.001, ["yd"] = 0.9144,
    };

    public static double? Number(string? text) =>
        text is not null && Amount().Match(text.Trim()) is { Success: true } match && match.Groups["unit"].Value.Trim().Length == 0 ? Value(match) : null;

    public static double? Minutes(string? text) => Scaled(text, s_minutes);

    public static double? SquareMetres(string? text) => Scaled(text, s_squareMetres);

    public static double? Metres(string? text) => Scaled(text, s_metres);

    public static double? Share(string? text)
    {
        if (text is null || Amount().Match(text.Trim()) is not { Success: true } match)
        {
            return null;
        }

        return match.Groups["unit"].Value.Trim() switch { "%" => Value(match) / 100, "" => Value(match), _ => null };
    }

    public static double? Celsius(string? text) => Temperature(text, difference: false);

    public static double? CelsiusDifference(string? text) => Temperature(text, difference: true);

    /// <summary>`50-90 °F`, `10 min-1 h`: the two ends, the first taking the second's unit where it has none.</summary>
    public static (string Low, string High)? Ends(string? text)
    {
        if (text is null || Two().Match(text.Trim()) is not { Success: true } match)
        {
            return null;
        }

        string lowUnit = match.Groups["u1"].Value.Trim(), highUnit = match.Groups["u2"].Value.Trim();
        return ($"{match.Groups["n1"].Value} {(lowUnit.Length == 0 ? highUnit : lowUnit)}", $"{match.Groups["n2"].Value} {highUnit}");
    }

    private static double? Scaled(string? text, Dictionary<string, double> units)
    {
        if (text is null || Amount().Match(text.Trim()) is not { Success: true } match)
        {
            return null;
        }

        string unit = match.Groups["unit"].Value.Replace("²", "2", StringComparison.Ordinal).Replace("^", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal);
        return units.TryGetValue(unit, out double scale) ? Value(match) * scale : null;
    }

    private static double? Temperature(string? text, bool difference)
    {
        if (text is null || Amount().Match(text.Trim()) is not { Success: true } match)
        {
            return null;
        }

        double value = Value(match);
        return match.Groups["unit"].Value.Replace("°", "", StringComparison.Ordinal).Trim().ToUpperInvariant() switch
        {
            "F" => difference ? value / 1.8 : (value - 32) / 1.8,
            "C" => value,
            "K" => difference ? value : value - 273.15,
            _ => null,
        };
    }

    private static double Value(Match match)
    {
        double whole = match.Groups["whole"].Success ? double.Parse(match.Groups["whole"].Value.Replace(",", "", StringComparison.Ordinal), CultureInfo.InvariantCulture) : 0;
        double part = match.Groups["top"].Success
            ? double.Parse(match.Groups["top"].Value, CultureInfo.InvariantCulture) / double.Parse(match.Groups["bottom"].Value, CultureInfo.InvariantCulture)
            : 0;
        return whole < 0 ? whole - part : whole + part;
    }

    [GeneratedRegex(@"^(?=[-+.0-9])(?:(?<whole>[-+]?[0-9][0-9,]*(?:\.[0-9]+)?|[-+]?\.[0-9]+)(?![0-9]*\s*/))?\s*(?:(?<top>[0-9]+)\s*/\s*(?<bottom>[0-9]+))?\s*(?<unit>[^0-9].*)?$")]
    private static partial Regex Amount();

    [GeneratedRegex(@"^(?<n1>[-+]?[0-9][0-9,./ ]*?)\s*(?<u1>[^0-9.,/\s-][^-–]*?)?\s*(?:-|–|\bto\b)\s*(?<n2>[-+]?[0-9][0-9,./ ]*?)\s*(?<u2>[^0-9.,/\s-].*)$")]
    private static partial Regex Two();
}
