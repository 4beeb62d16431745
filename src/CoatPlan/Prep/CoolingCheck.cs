using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Prep;

/// <summary>A pressure hold of the cooling system, judged.</summary>
/// <param name="Lost">Pressure lost over the hold; negative where it rose.</param>
/// <param name="Verdict">What it says.</param>
public sealed record CoolingCheck(Pressure Lost, CoolingVerdict Verdict)
{
    /// <summary>Judges a hold: begun at the cap's own rating, and no more lost than a gauge is out by.</summary>
    /// <param name="test">The readings.</param>
    /// <param name="figures">How far a reading may be off. Source: figure pressure-drop-share, an estimate; the cap's own rating: common practice.</param>
    public static CoolingCheck Judge(PressureTest test, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(test);
        ArgumentNullException.ThrowIfNull(figures);

        var share = figures.Share("pressure-drop-share").DecimalFractions;
        var lost = test.Start - test.End;
        var leaks = lost.Pascals > share * test.Start.Pascals;
        var verdict = leaks ? CoolingVerdict.Leaks
            : test.Cap is not { } cap ? CoolingVerdict.CapUnknown
            : Math.Abs(test.Start.Pascals - cap.Pascals) > share * cap.Pascals ? CoolingVerdict.NotAtCap
            : CoolingVerdict.Holds;
        return new CoolingCheck(lost, verdict);
    }
}
