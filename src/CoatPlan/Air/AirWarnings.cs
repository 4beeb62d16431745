using System.Globalization;
using CoatPlan.Prep;
using CoatPlan.Presets;
using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Air;

/// <summary>Which limits the air of a plan passes, and what would bring it under.</summary>
public static class AirWarnings
{
    /// <summary>Warnings, the most pressing first.</summary>
    /// <param name="air">What the air holds.</param>
    /// <param name="figures">The share of the lower explosive limit that is worked to.</param>
    /// <param name="format">The units that figures are told in.</param>
    /// <param name="names">From the key of a product to its name.</param>
    /// <param name="titles">From the identifier of a step to its title.</param>
    public static ImmutableArray<Warning> Of(AirReport air, Figures figures, QuantityFormat format, Func<string, string> names, Func<string, string> titles)
    {
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(format);
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(titles);
        var mends = new MendWords(air, format, names);
        return [.. OverLel(air, figures.Share("lel-share-work"), mends, titles), .. OverIdlh(air, mends), .. OverLimit(air, mends, titles), .. OverShortLimits(air, mends)];
    }

    private static IEnumerable<Warning> OverLel(AirReport air, Ratio share, MendWords mends, Func<string, string> titles)
    {
        if (air.WorstLelRatio < share.DecimalFractions)
            yield break;
        yield return Warn("over-lel", $"Vapour reaches {air.WorstLelRatio * 100:0} % of the lower explosive limit during “{titles(StepOf(air, step => step.LelRatio))}”; {share.Percent:0} % is what people work in (29 CFR 1915.35(b)). {mends.Of("over-lel")}");
    }

    private static IEnumerable<Warning> OverIdlh(AirReport air, MendWords mends) => RespiratorChoice.WorstPeaks(air)
        .Where(peak => peak.Solvent.Idlh is { } idlh && peak.Share >= idlh.Share)
        .Select(peak => Warn("over-idlh", $"{peak.Solvent.Name} reaches {peak.Share.PartsPerMillion:0} ppm, {peak.Solvent.Idlh!.Share.PartsPerMillion:0} ppm are immediately dangerous to life or health: nobody goes in, whatever the mask, until it is ventilated. {mends.Of("over-idlh")}"));

    private static IEnumerable<Warning> OverLimit(AirReport air, MendWords mends, Func<string, string> titles)
    {
        if (air.WorstMixtureRatio < 1)
            yield break;
        yield return Warn("over-limit", $"Solvents together reach {air.WorstMixtureRatio:0.0} times the limit of their mixture during “{titles(StepOf(air, step => step.MixtureRatio))}”, {air.TwaMixtureRatio:0.00} times it over the worst 8 h (29 CFR 1910.1000(d)). {mends.Of("over-limit")}");
    }

    private static IEnumerable<Warning> OverShortLimits(AirReport air, MendWords mends) => air.ShortLimitsPassed.Select(passed =>
        Warn("over-limit", $"{passed.Solvent.Name} averages {passed.Mean.PartsPerMillion:0} ppm over {passed.Over.TotalMinutes:0} min, its limit over that time is {passed.Limit.PartsPerMillion:0} ppm. {mends.Of("over-limit")}"));

    private static string StepOf(AirReport air, Func<StepAir, double> measure) => air.ByStep.MaxBy(measure)!.Step;

    private static Warning Warn(string code, FormattableString text) => new(code, null, null, text.ToString(CultureInfo.InvariantCulture));
}
