using System.Globalization;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Air;

/// <summary>Which respirator a job asks for.</summary>
/// <remarks>
/// None is never the answer where something is sprayed. Assigned protection factors are those of 29 CFR 1910.134(d)(3)(i)(A) Table 1: a kind may be worn up to
/// its factor times the limit and never above what is immediately dangerous. Above that the answer is not a better mask but to stay out and ventilate.
/// </remarks>
public static class RespiratorChoice
{
    private const string Cartridges = "organic-vapour cartridges with particulate prefilters";
    private const string HalfMask = "half mask, " + Cartridges;
    private const string FullFace = "full-face mask, " + Cartridges;
    private const string SuppliedAir = "supplied air, continuous flow, full-face mask or hood";
    private const string Nothing = "none for this job's vapour; splash goggles and gloves";
    private const string DustMask = "particulate filter, class N95 or better, for the dusty steps";
    private const string LeadMask = "half mask, class P100 particulate filters, for the dusty steps";

    /// <summary>The respirator of a job.</summary>
    /// <param name="air">What the air holds.</param>
    /// <param name="hazards">What else is in it.</param>
    /// <param name="catalogue">Respirators, hazards, and the share of the lower explosive limit that is worked to.</param>
    public static RespiratorAdvice For(AirReport air, BreathingHazards hazards, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(hazards);
        ArgumentNullException.ThrowIfNull(catalogue);

        var why = ImmutableArray.CreateBuilder<string>();
        var kind = ForVapour(air, hazards.Products, hazards.Sprays, catalogue, why);
        if (hazards.MakesDust)
            why.Add(Dust(hazards));
        if (kind is null)
            kind = hazards.MakesDust ? hazards.MayHoldLead ? LeadMask : DustMask : Nothing;
        var mask = kind;
        var reasons = ReasonsToStayOut(air, kind, catalogue);
        if (!reasons.IsEmpty)
            kind = "do not enter before it is ventilated: no mask is enough for this air; then " + kind;
        why.InsertRange(0, reasons);
        Duration? life = mask is HalfMask or FullFace && !air.ByStep.IsEmpty ? CartridgeLife.Of(air, hazards.Humidity, catalogue.Figures) : null;
        var factor = FactorOf(mask, catalogue);
        if (kind != Nothing)
            AddWhatGoesWithIt(why, air, life, hazards.Humidity, catalogue.Figures);
        return new RespiratorAdvice(kind, why.ToImmutable()) { Factor = factor, CartridgeLife = life };
    }

    /// <summary>The kind that is worn against the vapour of the coats: what is used up of it, and what is told of it, follow from that.</summary>
    /// <param name="air">What the air holds.</param>
    /// <param name="products">The products that are put on.</param>
    /// <param name="sprays">Whether anything is sprayed, not brushed.</param>
    /// <param name="catalogue">Respirators and hazards.</param>
    /// <returns>Null where none is asked for.</returns>
    public static RespiratorKind? WornFor(AirReport air, ImmutableArray<Label> products, bool sprays, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(catalogue);
        return ForVapour(air, products, sprays, catalogue, ImmutableArray.CreateBuilder<string>()) is { } mask ? KindOf(mask, catalogue) : null;
    }

    private static int? FactorOf(string? mask, Catalogue catalogue) => KindOf(mask, catalogue)?.Factors[mask == HalfMask ? "half" : "full"];

    private static RespiratorKind? KindOf(string? mask, Catalogue catalogue) => mask switch
    {
        HalfMask or FullFace => catalogue.Respirator("air-purifying"),
        SuppliedAir => catalogue.Respirator("supplied-continuous"),
        _ => null,
    };

    /// <summary>The solvent that comes nearest to what the kind may be worn in; nothing where none is in the air.</summary>
    private static string MaximumUse(AirReport air, int? factor)
    {
        if (factor is not { } known)
            return "";

        var nearest = air.BySolvent.Where(one => one.MaximumUse(known) is not null)
            .MaxBy(one => one.Peak.DecimalFractions / one.MaximumUse(known)!.Value.DecimalFractions);
        return nearest is { Peak.PartsPerMillion: > 0 }
            ? Say($" Nearest to its maximum use concentration is {nearest.Solvent.Name}, {nearest.Peak.PartsPerMillion:0} of {nearest.MaximumUse(known)!.Value.PartsPerMillion:0} ppm.")
            : "";
    }

    private static string? ForVapour(AirReport air, ImmutableArray<Label> products, bool sprays, Catalogue catalogue, ImmutableArray<string>.Builder why)
    {
        if (NeedsSuppliedAir(products, catalogue) is { } because)
        {
            why.Add(because);
            return SuppliedAir;
        }

        if (air.PropellantRatio >= 1)
        {
            why.Add(Say($"Propellant gas alone reaches {air.PropellantRatio:0.0} times its limit in the mixed room, and no cartridge holds propellant: air must come from outside it."));
            return SuppliedAir;
        }

        if (!sprays && air.ByStep.IsEmpty)
            return null;

        var filters = catalogue.Respirator("air-purifying").Factors;
        var worst = air.WorstMixtureRatio;
        var kind = worst <= filters["half"] ? HalfMask : worst <= filters["full"] ? FullFace : SuppliedAir;
        why.Add(worst > 0
            ? Say($"The mixed room reaches {worst:0.0} times the limit of the mixture; a half mask may be worn up to {filters["half"]} times, a full face up to {filters["full"]} times (29 CFR 1910.134 Table 1).") + MaximumUse(air, FactorOf(kind, catalogue))
            : "Spray mist and vapour are breathed in beside the can whatever the room holds: no spraying without a respirator.");
        return kind;
    }

    private static string? NeedsSuppliedAir(ImmutableArray<Label> products, Catalogue catalogue)
    {
        foreach (var product in products)
        {
            foreach (var hazard in product.Hazards.Select(catalogue.Hazard))
            {
                if (hazard.Respirator.Length > 0 && catalogue.Respirator(hazard.Respirator).SuppliesAir)
                    return $"{product.Name} holds {hazard.Word}: it does not warn by smell, so a cartridge that lets it through is not noticed ({hazard.Provenance.Source}).";
            }
        }

        return null;
    }

    private static string Dust(BreathingHazards hazards) => hazards.MayHoldLead
        ? "An old film may hold lead or chromate: class P100 filters for anything dusty, wet methods, no dry power sanding until a test says negative."
        : "Dry sanding: at least a class N95 particulate filter. A dust mask holds no vapour.";

    /// <summary>What no mask is for: explosive air, air that is dangerous at once, air beyond what the kind may be worn in.</summary>
    private static ImmutableArray<string> ReasonsToStayOut(AirReport air, string kind, Catalogue catalogue)
    {
        var reasons = ImmutableArray.CreateBuilder<string>();
        var lelShare = catalogue.Figures.Share("lel-share-work");
        if (air.WorstLelRatio >= lelShare.DecimalFractions)
            reasons.Add(Say($"Vapour reaches {air.WorstLelRatio * 100:0} % of the lower explosive limit in the mixed room, over the {lelShare.Percent:0} % that people work in (29 CFR 1915.35(b))."));
        foreach (var peak in WorstPeaks(air))
        {
            if (peak.Solvent.Idlh is { } idlh && peak.Share >= idlh.Share)
                reasons.Add(Say($"{peak.Solvent.Name} reaches {peak.Share.PartsPerMillion:0} ppm; {idlh.Share.PartsPerMillion:0} ppm are immediately dangerous to life or health."));
        }

        var supplied = catalogue.Respirator("supplied-continuous").Factors["full"];
        if (kind == SuppliedAir && air.WorstMixtureRatio > supplied)
            reasons.Add(Say($"The mixture reaches {air.WorstMixtureRatio:0} times its limit, over the {supplied} times that supplied air may be worn in."));
        return reasons.ToImmutable();
    }

    /// <summary>The highest share of each solvent over the whole plan, by name.</summary>
    internal static IEnumerable<SolventPeak> WorstPeaks(AirReport air) => air.ByStep.SelectMany(step => step.Peaks)
        .GroupBy(peak => peak.Solvent.Name).OrderBy(group => group.Key, StringComparer.Ordinal)
        .Select(group => group.MaxBy(peak => peak.Share.DecimalFractions)!);

    private static void AddWhatGoesWithIt(
        ImmutableArray<string>.Builder why, AirReport air, Duration? life, Ratio humidity, Figures figures)
    {
        if (life is { } change)
            why.Add(Change(change, air, humidity, figures));

        why.Add("The factor holds with a fit test and a shaved face only; cover eyes and skin too.");
    }

    private static string Change(Duration change, AirReport air, Ratio humidity, Figures figures)
    {
        var low = air.BoilsLow.IsEmpty ? "" : $"; they hardly hold {string.Join(", ", air.BoilsLow)}, so none is kept to the next day";
        var rule = air.Room is null
            ? ""
            : Say($" Rule of thumb: {CartridgeLife.ByRule(air.CartridgeLoad, humidity, figures).TotalHours:0.#} h at {air.CartridgeLoad.PartsPerMillion:0} ppm, {humidity.Percent:0} % humidity.");
        return Say($"Change cartridges after {change.TotalHours:0.#} h of spraying, by time, never by smell (29 CFR 1910.134(d)(3)(iii)(B)(2)){low}.") + rule;
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
