using System.Globalization;

namespace CoatPlan.Problems;

/// <summary>What a figure may be: code, messages, the schema and the reference all read it here.</summary>
/// <param name="Least">The lower bound.</param>
/// <param name="Most">The upper bound, included; infinity: none.</param>
/// <param name="Unit">The unit of both; empty: a bare number.</param>
/// <param name="LeastIsOut">Whether the lower bound itself is too little ("more than 0").</param>
public sealed record Bounds(double Least, double Most, string Unit = "", bool LeastIsOut = false)
{
    /// <summary>Whether a figure in <see cref="Unit"/> lies within; a figure that is not finite never does.</summary>
    /// <param name="value">The figure.</param>
    public bool Hold(double value) => double.IsFinite(value) && value <= Most && (LeastIsOut ? value > Least : value >= Least);

    /// <summary>The bounds in words, e.g. <c>0 to 100 %</c>, <c>more than 0</c> or, where only one figure is within, <c>1</c>.</summary>
    public override string ToString()
    {
        string unit = Unit.Length == 0 ? "" : " " + Unit;
        string least = Least.ToString(CultureInfo.InvariantCulture);
        string most = Most.ToString("#,##0.######", CultureInfo.InvariantCulture);
        if (!double.IsFinite(Most)) return LeastIsOut ? $"more than {least}{unit}" : $"{least}{unit} or more";
        if (Least == Most) return least + unit;
        return LeastIsOut ? $"more than {least} and at most {most}{unit}" : $"{least} to {most}{unit}";
    }
}
