using System.Globalization;
using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Air;

/// <summary>What would bring a passed limit under, in words, each with its figure: more exhaust, less at a time, longer between.</summary>
/// <param name="air">What the air holds.</param>
/// <param name="format">The units that figures are told in.</param>
/// <param name="names">From the key of a product to its name.</param>
internal sealed class MendWords(AirReport air, QuantityFormat format, Func<string, string> names)
{
    private const string WithoutFigures = "Smaller batches, or more time between them, bring it down.";

    /// <summary>The mend of one limit.</summary>
    /// <param name="code">The warning that it goes with.</param>
    public string Of(string code)
    {
        if (air.Mends.FirstOrDefault(mend => mend.Code == code) is not { } mend)
            return air.ExhaustForLimit is { } needed ? $"{Exhaust(needed)}; so do smaller batches, or more time between them." : WithoutFigures;

        var less = mend.AtATime.IsEmpty ? "" : $"no more than {string.Join(", ", mend.AtATime.Select(Less))} in one go";
        var longer = mend.Between is { } pause && pause > Duration.Zero ? $"{QuantityFormat.Duration(pause)} from the end of one to the start of the next" : "";
        var both = string.Join(", and ", new[] { less, longer }.Where(text => text.Length > 0));
        return both.Length == 0 ? $"{Exhaust(mend.Exhaust)}." : $"{Exhaust(mend.Exhaust)}. Without it: {both}, as far as the recoat windows allow.";
    }

    private string Exhaust(VolumeFlow needed) => $"An exhaust of {format.Flow(needed)} keeps it under";

    private string Less(SprayAtATime one) => one.Packages is { } packages
        ? string.Create(CultureInfo.InvariantCulture, $"{packages:0.##} of a can of {names(one.Product)} (its heaviest coat in {one.Goes} goes)")
        : string.Create(CultureInfo.InvariantCulture, $"1/{one.Goes} of the heaviest coat of {names(one.Product)}");
}
