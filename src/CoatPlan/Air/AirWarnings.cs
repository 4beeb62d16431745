using System.Globalization;
using CoatPlan.Prep;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Air;

/// <summary>Which limits the air of a plan passes, and what would bring it under.</summary>
public static class AirWarnings
{
    /// <summary>Warnings, the most pressing first.</summary>
    /// <param name="air">What the air holds.</param>
    /// <param name="figures">The share of the lower explosive limit that is worked to.</param>
    public static ImmutableArray<Warning> Of(AirReport air, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(figures);
        return [.. OverLel(air, figures.Share("lel-share-work")), .. OverIdlh(air), .. OverLimit(air), .. OverShortLimits(air)];
    }

    private static IEnumerable<Warning> OverLel(AirReport air, Ratio share)
    {
        if (air.WorstLelRatio < share.DecimalFractions)
            yield break;
        yield return Warn("over-lel", $"Vapour reaches {air.WorstLelRatio * 100:0} % of the lower explosive limit in {StepOf(air, step => step.LelRatio)}; {share.Percent:0} % is what people work in (29 CFR 1915.35(b)). {Mend(air.ExhaustForLel)}");
    }

    private static IEnumerable<Warning> OverIdlh(AirReport air) => RespiratorChoice.WorstPeaks(air)
        .Where(peak => peak.Solvent.Idlh is { } idlh && peak.Share >= idlh.Share)
        .Select(peak => Warn("over-idlh", $"{peak.Solvent.Name} reaches {peak.Share.PartsPerMillion:0} ppm, {peak.Solvent.Idlh!.Share.PartsPerMillion:0} ppm are immediately dangerous to life or health: nobody goes in, whatever the mask, until it is ventilated. {Mend(air.ExhaustForLimit)}"));

    private static IEnumerable<Warning> OverLimit(AirReport air)
    {
        if (air.WorstMixtureRatio < 1)
            yield break;
        yield return Warn("over-limit", $"Solvents together reach {air.WorstMixtureRatio:0.0} times the limit of their mixture in {StepOf(air, step => step.MixtureRatio)}, {air.TwaMixtureRatio:0.00} times it over the worst 8 h (29 CFR 1910.1000(d)). {Mend(air.ExhaustForLimit)}");
    }

    private static IEnumerable<Warning> OverShortLimits(AirReport air) => air.ShortLimitsPassed.Select(passed =>
        Warn("over-limit", $"{passed.Solvent.Name} averages {passed.Mean.PartsPerMillion:0} ppm over {passed.Over.TotalMinutes:0} min, its limit over that time is {passed.Limit.PartsPerMillion:0} ppm. {Mend(air.ExhaustForLimit)}"));

    private static string StepOf(AirReport air, Func<StepAir, double> measure) => air.ByStep.MaxBy(measure)!.Step;

    private static FormattableString Mend(VolumeFlow? exhaust) => exhaust is { } needed
        ? $"An exhaust of {needed.CubicMetersPerMinute:0.0} m³/min ({needed.CubicFeetPerMinute:0} ft³/min) keeps it under; so do smaller batches, or more time between them."
        : (FormattableString)$"Smaller batches, or more time between them, bring it down.";

    private static Warning Warn(string code, FormattableString text) => new(code, null, null, text.ToString(CultureInfo.InvariantCulture));
}
