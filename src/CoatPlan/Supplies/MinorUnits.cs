namespace CoatPlan.Supplies;

/// <summary>Money in whole minor units of its currency. Source: ISO 4217 (from memory).</summary>
internal static class MinorUnits
{
    private static readonly ImmutableHashSet<string> None =
        ["BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "VND", "VUV", "XAF", "XOF", "XPF"];

    private static readonly ImmutableHashSet<string> Thousandths = ["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"];

    /// <summary>Decimals of a currency: 2 for most.</summary>
    public static int Of(string currency)
    {
        if (None.Contains(currency))
            return 0;
        return Thousandths.Contains(currency) ? 3 : 2;
    }

    /// <summary>Half of a unit rounds away from zero.</summary>
    public static decimal Round(decimal money, string currency) => decimal.Round(money, Of(currency), MidpointRounding.AwayFromZero);

    /// <summary>Parts of a sum by weight, each in whole minor units, that add to it exactly: what is left over goes where most was cut off.</summary>
    /// <param name="sum">Already in whole minor units, at least 0.</param>
    /// <param name="weights">At least 0 each; all of them 0 shares evenly.</param>
    /// <param name="currency">ISO 4217 code.</param>
    public static ImmutableArray<decimal> Share(decimal sum, ImmutableArray<double> weights, string currency)
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

    private static decimal Unit(string currency) => Of(currency) switch { 0 => 1m, 3 => 0.001m, _ => 0.01m };
}
