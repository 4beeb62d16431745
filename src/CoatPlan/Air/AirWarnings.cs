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
    /// <param name="names">From the key of a product to its name.</param>
    /// <param name="titles">From the identifier of a step to its title.</param>
    public static ImmutableArray<Warning> Of(AirReport air, Figures figures, Func<string, string> names, Func<string, string> titles)
    {
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(titles);
        return [.. OverLel(air, figures.Share("lel-share-work"), names, titles), .. OverIdlh(air, names), .. OverLimit(air, names, titles), .. OverShortLimits(air, names)];
    }

    private static IEnumerable<Warning> OverLel(AirReport air, Ratio share, Func<string, string> names, Func<string, string> titles)
    {
        if (air.WorstLelRatio < share.DecimalFractions)
            yield break;
        yield return Warn("over-lel", $"Vapour reaches {air.WorstLelRatio * 100:0} % of the lower explosive limit during “{titles(StepOf(air, step => step.LelRatio))}”; {share.Percent:0} % is what people work in (29 CFR 1915.35(b)). {Mend(air, "over-lel", names)}");
    }

    private static IEnumerable<Warning> OverIdlh(AirReport air, Func<string, string> names) => RespiratorChoice.WorstPeaks(air)
        .Where(peak => peak.Solvent.Idlh is { } idlh && peak.Share >= idlh.Share)
        .Select(peak => Warn("over-idlh", $"{peak.Solvent.Name} reaches {peak.Share.PartsPerMillion:0} ppm, {peak.Solvent.Idlh!.Share.PartsPerMillion:0} ppm are immediately dangerous to life or health: nobody goes in, whatever the mask, until it is ventilated. {Mend(air, "over-idlh", names)}"));

    private static IEnumerable<Warning> OverLimit(AirReport air, Func<string, string> names, Func<string, string> titles)
    {
        if (air.WorstMixtureRatio < 1)
            yield break;
        yield return Warn("over-limit", $"Solvents together reach {air.WorstMixtureRatio:0.0} times the limit of their mixture during “{titles(StepOf(air, step => step.MixtureRatio))}”, {air.TwaMixtureRatio:0.00} times it over the worst 8 h (29 CFR 1910.1000(d)). {Mend(air, "over-limit", names)}");
    }

    private static IEnumerable<Warning> OverShortLimits(AirReport air, Func<string, string> names) => air.ShortLimitsPassed.Select(passed =>
        Warn("over-limit", $"{passed.Solvent.Name} averages {passed.Mean.PartsPerMillion:0} ppm over {passed.Over.TotalMinutes:0} min, its limit over that time is {passed.Limit.PartsPerMillion:0} ppm. {Mend(air, "over-limit", names)}"));

    private static string StepOf(AirReport air, Func<StepAir, double> measure) => air.ByStep.MaxBy(measure)!.Step;

    /// <summary>What would bring it under, each as a figure: more exhaust, less at a time, longer between.</summary>
    private static string Mend(AirReport air, string code, Func<string, string> names)
    {
        const string Unknown = "Smaller batches, or more time between them, bring it down.";
        if (air.Mends.FirstOrDefault(mend => mend.Code == code) is not { } mend)
            return air.ExhaustForLimit is { } needed ? $"{Exhaust(needed)}; so do smaller batches, or more time between them." : Unknown;

        var less = mend.AtATime.IsEmpty ? "" : $"no more than {string.Join(", ", mend.AtATime.Select(one => Less(one, names)))} in one go";
        var longer = mend.Between switch
        {
            { } pause when pause > Duration.Zero => Say($"{QuantityFormat.Duration(pause)} from the end of one to the start of the next"),
            _ => "",
        };
        var both = string.Join(", and ", new[] { less, longer }.Where(text => text.Length > 0));
        return both.Length == 0 ? $"{Exhaust(mend.Exhaust)}." : $"{Exhaust(mend.Exhaust)}. With the exhaust there is: {both}, as far as the recoat windows allow.";
    }

    private static string Exhaust(VolumeFlow needed) =>
        Say($"An exhaust of {needed.CubicMetersPerMinute:0.0} m³/min ({needed.CubicFeetPerMinute:0} ft³/min) keeps it under");

    private static string Less(SprayAtATime one, Func<string, string> names) => one.Packages is { } packages
        ? Say($"{packages:0.##} of a can of {names(one.Product)} (its heaviest coat in {one.Goes} goes)")
        : Say($"1/{one.Goes} of the heaviest coat of {names(one.Product)}");

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static Warning Warn(string code, FormattableString text) => new(code, null, null, text.ToString(CultureInfo.InvariantCulture));
}
