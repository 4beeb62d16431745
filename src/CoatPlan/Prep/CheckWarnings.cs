using System.Globalization;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Prep;

/// <summary>What checks of engine and cooling system say against spending money on paint.</summary>
internal static class CheckWarnings
{
    /// <summary>One for each check that fails or cannot be judged.</summary>
    public static IEnumerable<Warning> Of(Checks? checks, Catalogue catalogue, WarningTexts texts)
    {
        if (checks is { CylinderPressures.IsEmpty: false })
        {
            var check = CylinderCheck.Judge(checks.CylinderPressures, catalogue.Figures);
            if (check.Verdict is CylinderVerdict.Uneven or CylinderVerdict.Low)
            {
                yield return texts.Write(
                    check.Verdict == CylinderVerdict.Uneven ? "cylinder-uneven" : "cylinder-low",
                    null,
                    null,
                    ("number", check.LowestCylinder.ToString(CultureInfo.InvariantCulture)),
                    ("low", Psi(check.Lowest)),
                    ("high", Psi(check.Highest)),
                    ("share", Percent(check.LowestShare)),
                    ("least", Percent(catalogue.Figures.Share("cylinder-least-share").DecimalFractions)),
                    ("good", Psi(catalogue.Figures.Pressure("cylinder-good"))));
            }
        }

        if (checks?.PressureTest is { } test && CoolingCheck.Judge(test, catalogue.Figures) is { Verdict: not CoolingVerdict.Holds } cooling)
        {
            yield return texts.Write(
                cooling.Verdict switch
                {
                    CoolingVerdict.Leaks => "pressure-lost",
                    CoolingVerdict.NotAtCap => "pressure-not-at-cap",
                    _ => "pressure-cap-unknown",
                },
                null,
                null,
                ("start", Psi(test.Start)),
                ("end", Psi(test.End)),
                ("cap", test.Cap is { } cap ? Psi(cap) : ""),
                ("most", Percent(catalogue.Figures.Share("pressure-drop-share").DecimalFractions)));
        }
    }

    private static string Psi(Pressure pressure) =>
        string.Create(CultureInfo.InvariantCulture, $"{pressure.PoundsForcePerSquareInch:0.#} psi");

    private static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{share * 100:0} %");
}
