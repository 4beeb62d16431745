using CoatPlan.Jobs;
using UnitsNet;

namespace CoatPlan.Supplies;

/// <summary>What consumables are counted in, as it is written behind a number.</summary>
public static class UnitWords
{
    private static readonly ImmutableDictionary<string, string> Symbols =
        ImmutableDictionary.CreateRange(StringComparer.Ordinal, [KeyValuePair.Create("qt", "qt"), KeyValuePair.Create("L", "L"), KeyValuePair.Create("ft2", "ft²"), KeyValuePair.Create("m", "m"), KeyValuePair.Create("m2", "m²")]);

    private static readonly ImmutableArray<string> Hissing = ["ch", "sh", "x"];

    /// <summary>An amount in what the plans of a job print: quarts become litres and square feet square metres in a metric one; what is counted by the piece stays.</summary>
    /// <param name="amount">How many.</param>
    /// <param name="unit">What one is, as the presets count it.</param>
    /// <param name="units">The units of the job.</param>
    public static (double Amount, string Unit) In(double amount, string unit, PrintUnits units) => (units, unit) switch
    {
        (PrintUnits.Metric, "qt") => (Volume.FromUsQuarts(amount).Liters, "L"),
        (PrintUnits.Metric, "ft2") => (Area.FromSquareFeet(amount).SquareMeters, "m2"),
        _ => (amount, unit),
    };

    /// <summary>A unit behind an amount: <c>1 brush</c>, <c>7 cloths</c>, <c>6 brushes</c>; a symbol such as <c>qt</c> has no plural.</summary>
    /// <param name="amount">How many.</param>
    /// <param name="unit">What one is.</param>
    public static string Behind(double amount, string unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        if (Symbols.TryGetValue(unit, out var symbol))
            return symbol;
        if (amount == 1 || unit.Length == 0 || (unit[^1] == 's' && unit.Length > 2))
            return unit;

        return Hissing.Any(end => unit.EndsWith(end, StringComparison.Ordinal)) ? unit + "es" : unit + "s";
    }
}
