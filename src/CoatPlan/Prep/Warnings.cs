using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Prep;

/// <summary>What will go wrong with a job as it stands.</summary>
internal static class Warnings
{
    /// <summary>Surface by surface in the order of the job, then products, then the job, each once.</summary>
    public static ImmutableArray<Warning> Of(Job job, PrepContext context, WarningTexts texts) =>
    [
        .. context.Surfaces.SelectMany(surface => OfSurface(surface, context.Format, texts))
            .Concat(OfProducts(context, texts))
            .Concat(OfJob(job, context, texts))
            .Concat(CheckWarnings.Of(job.Checks, context.Catalogue, texts))
            .Distinct(new SameWarning()),
    ];

    private static IEnumerable<Warning> OfSurface(SettledSurface surface, QuantityFormat format, WarningTexts texts)
    {
        foreach (var warning in surface.Pairings.SelectMany(pairing => OfPairing(pairing, surface, texts)))
            yield return warning;

        foreach (var warning in OfHeat(surface, format, texts))
            yield return warning;

        foreach (var row in texts.ByCondition("surface").Where(row => row.Condition.Holds(surface.Known)))
        {
            var named = Named(row.Product, surface);
            yield return WarningTexts.Write(row, surface.Id, named?.Key, row.Status, name => name switch
            {
                "surface" => surface.Name,
                "product" => named?.Name ?? "the coating",
                _ => Sentence.List(row.Condition.Found(name, surface.Known)),
            });
        }
    }

    private static IEnumerable<Warning> OfPairing(Pairing pairing, SettledSurface surface, WarningTexts texts)
    {
        var judged = texts.Judgements.FirstOrDefault(row => row.Fits(pairing));
        return (judged?.Rows ?? [])
            .Select(id => texts.Rows.First(row => row.Id == id))
            .Select(row => WarningTexts.Write(row, surface.Id, pairing.Above.Key, row.Status.Length > 0 ? row.Status : Words(pairing.Judgement.Provenance.Status), name => name switch
            {
                "surface" => surface.Name,
                "product" => pairing.Above.Name,
                "below" => pairing.Below,
                "material" => surface.Surface.Material,
                "finish" => Finish(surface.Surface.Finish),
                "reason" => pairing.Judgement.Reason,
                _ => null,
            }));
    }

    private static IEnumerable<Warning> OfHeat(SettledSurface surface, QuantityFormat format, WarningTexts texts)
    {
        if (surface.Surface.Heat is not { } heat)
            return [];

        return surface.Layers
            .Select(layer => layer.Label)
            .Where(label => label.Heat is not { } stands || stands < heat)
            .Select(label => texts.Write(
                label.Heat is null ? "heat-unknown" : label.HeatPeak >= heat ? "too-hot-peak" : "too-hot",
                surface.Id,
                label.Key,
                ("surface", surface.Name),
                ("product", label.Name),
                ("heat", Written(heat, format)),
                ("stands", Written(label.Heat, format)),
                ("peak", Written(label.HeatPeak, format))));
    }

    private static IEnumerable<Warning> OfProducts(PrepContext context, WarningTexts texts)
    {
        foreach (var label in context.Surfaces.SelectMany(surface => surface.Layers).Select(layer => layer.Label).DistinctBy(label => label.Key))
        {
            if (label.Preset is null)
                yield return texts.Write("pairing-unknown", null, label.Key, ("product", label.Name));
            if (label.Solvents.IsEmpty)
                yield return texts.Write("solvents-unknown", null, label.Key, ("product", label.Name));

            var known = new TraitsBuilder().With("hazard", label.Hazards).With("layer", label.Preset is { } preset ? [preset] : []).Done();
            foreach (var row in texts.ByCondition("product").Where(row => row.Condition.Holds(known)))
                yield return WarningTexts.Write(row, null, label.Key, row.Status, name => name == "product" ? label.Name : null);
        }
    }

    private static IEnumerable<Warning> OfJob(Job job, PrepContext context, WarningTexts texts) =>
        texts.ByCondition("job")
            .Where(row => row.Condition.Holds(context.Job))
            .Select(row => WarningTexts.Write(row, null, null, row.Status, name =>
                name == "items" ? Sentence.List(job.Place.Ignition) : Sentence.List(row.Condition.Found(name, context.Job))));

    private static Label? Named(string? which, SettledSurface surface) => which switch
    {
        "top" => surface.Layers.LastOrDefault()?.Label,
        "over" => surface.Layers.FirstOrDefault(layer => !layer.OnlyBare)?.Label,
        "first" => surface.Layers.FirstOrDefault()?.Label,
        _ => null,
    };

    private static string Finish(string word) => word == "unknown" ? "an unknown finish" : word;

    private static string Written(Temperature? temperature, QuantityFormat format) => temperature is { } known ? format.Temperature(known) : "an unknown heat";

    private static string Words(Status status) => status switch
    {
        Status.Published => "published",
        Status.SecondHand => "published, read second-hand",
        Status.Computed => "computed",
        Status.CommonPractice => "common practice",
        Status.Estimate => "estimate",
        _ => "from memory",
    };
}
