using System.Globalization;

namespace CoatPlan.Supplies;

/// <summary>Money in whole minor units of its currency. Source: ISO 4217, list one (from memory).</summary>
public static class MinorUnits
{
    private static readonly ImmutableHashSet<string> None =
        ["BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "UYI", "VND", "VUV", "XAF", "XOF", "XPF"];

    private static readonly ImmutableHashSet<string> Thousandths = ["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"];

    private static readonly ImmutableHashSet<string> TenThousandths = ["CLF", "UYW"];

    /// <summary>Digits behind the point of a currency: 2 for most, 0, 3 or 4 for some.</summary>
    /// <param name="currency">ISO 4217 code; one that is not in the list has 2.</param>
    public static int Of(string currency)
    {
        if (None.Contains(currency))
            return 0;
        if (Thousandths.Contains(currency))
            return 3;
        return TenThousandths.Contains(currency) ? 4 : 2;
    }

    /// <summary>An amount with the digits of its currency, thousands grouped, the same whatever the machine's culture: <c>1,592.84 USD</c>, <c>8,555 JPY</c>.</summary>
    /// <param name="money">The amount.</param>
    /// <param name="currency">ISO 4217 code.</param>
    public static string Write(decimal money, string currency) =>
        $"{Round(money, currency).ToString("N" + Of(currency).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)} {currency}";

    /// <summary>An amount in whole minor units; half of a unit rounds away from zero.</summary>
    /// <param name="money">The amount.</param>
    /// <param name="currency">ISO 4217 code.</param>
    public static decimal Round(decimal money, string currency) => decimal.Round(money, Of(currency), MidpointRounding.AwayFromZero);

    /// <summary>Parts of a sum by weight, each in whole minor units, that add to it exactly: what is left over goes where most was cut off.</summary>
    /// <param name="sum">Already in whole minor units, at least 0.</param>
    /// <param name="weights">At least 0 each; all of them 0 shares evenly.</param>
    /// <param name="currency">ISO 4217 code.</param>
    internal static ImmutableArray<decimal> Share(decimal sum, ImmutableArray<double> weights, string currency)
    {
        if (weights.IsEmpty)
            return [];

        var all = weights.Sum();
        var unit = Unit(currency);
        var exact = weights.Select(weight => sum / unit * (all > 0 ? (decimal)(weight / all) : 1m / weights.Length)).ToArray();
        var whole = exact.Select(decimal.Floor).ToArray();
        var left = (int)((sum / unit) - whole.Sum());
        foreach (var i in Enumerable.Range(0, whole.Length).OrderByDescending(i => exact[i] - whole[i]).ThenBy(i => i).Take(left))
            whole[i]++;
        return [.. whole.Select(units => units * unit)];
    }

    private static decimal Unit(string currency) => new(1, 0, 0, isNegative: false, scale: (byte)Of(currency));
}
