using CoatPlan.Jobs;
using CoatPlan.Prep;
using CoatPlan.Presets;
using Operation = CoatPlan.Prep.Operation;

namespace CoatPlan.Cautions;

/// <summary>What is so in a job, for the cautions that follow from it.</summary>
/// <param name="All">Every fact, in the order of the job.</param>
/// <param name="Ignition">What the job lists as able to light vapour.</param>
public sealed record CautionFacts(ImmutableArray<CautionFact> All, ImmutableArray<string> Ignition)
{
    private const string Spraying = "spraying";

    /// <summary>Keys that a caution may ask for.</summary>
    internal static readonly ImmutableArray<string> Keys =
    [
        .. TraitKeys.All, "asbestos", Spraying, "method", "drying", "place", "exhaust", "hot", "over", "respirator",
    ];

    // Said of each product by name instead, so that a caution names the can and not the part.
    private static readonly ImmutableArray<string> SaidOfProducts = ["hazard", "heat-cured"];

    /// <summary>The facts of a job and of what it needs done.</summary>
    /// <param name="job">The job.</param>
    /// <param name="labels">Its products.</param>
    /// <param name="sequence">Its operations.</param>
    public static CautionFacts From(Job job, Labels labels, Sequence sequence)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(labels);
        ArgumentNullException.ThrowIfNull(sequence);

        var used = job.Surfaces.Select(surface => surface.System).ToHashSet(StringComparer.Ordinal);
        var products = job.Systems
            .Where(system => used.Contains(system.Key))
            .SelectMany(system => system.Layers)
            .Select(layer => labels[layer.Product])
            .DistinctBy(label => label.Key);
        return new CautionFacts(
            [
                .. OfPlace(job),
                .. sequence.Known().SelectMany(known => OfTraits(known.Known, known.Who)),
                .. products.SelectMany(OfProduct),
                .. sequence.Operations.SelectMany(operation => OfOperation(operation, sequence)),
            ],
            job.Place.Ignition);
    }

    /// <summary>The same with one fact more, such as what the air came to: key <c>over</c>, word <c>limit</c>, <c>lel</c> or <c>idlh</c>; or what is worn in it: key <c>respirator</c>, word <c>cartridges</c> or <c>supplied-air</c>.</summary>
    public CautionFacts With(CautionFact fact) => this with { All = All.Add(fact) };

    private static IEnumerable<CautionFact> OfPlace(Job job)
    {
        yield return new CautionFact("place", job.Place.Outdoors ? "outdoors" : "indoors");
        yield return new CautionFact("exhaust", job.Place.Exhaust.CubicMetersPerMinute > 0 ? "some" : "none");
    }

    private static List<CautionFact> OfTraits(Traits known, string who)
    {
        var facts = new List<CautionFact>();
        foreach (var (key, words) in known.Entries)
        {
            if (SaidOfProducts.Contains(key))
                continue;
            foreach (var word in words)
                facts.Add(new CautionFact(key, word, who));
        }

        return facts;
    }

    private static IEnumerable<CautionFact> OfProduct(Label label)
    {
        yield return new CautionFact("method", label.Method.Word, label.Name);
        if (label.Method.Word != "brush")
            yield return new CautionFact(Spraying, "true", label.Name);
        yield return new CautionFact("drying", DryingWord(label.Drying), label.Name);
        foreach (var hazard in label.Hazards)
            yield return new CautionFact("hazard", hazard, label.Name);
        if (!label.Cure.IsEmpty)
            yield return new CautionFact("heat-cured", "true", label.Name);
    }

    private static string DryingWord(DryingKind drying) => drying switch
    {
        DryingKind.Oxidation => "oxidation",
        DryingKind.Solvent => "solvent",
        DryingKind.Waterborne => "waterborne",
        DryingKind.Moisture => "moisture",
        _ => "two-part",
    };

    private static IEnumerable<CautionFact> OfOperation(Operation operation, Sequence sequence)
    {
        var who = operation.Surfaces.Select(sequence.NameOf).DefaultIfEmpty("");
        foreach (var name in who)
        {
            yield return new CautionFact("does", operation.Word, name);
            if (operation.MakesDust && operation.Word != "blow-off")
                yield return new CautionFact("dust", "true", name);
            if (operation.HotWork)
                yield return new CautionFact("hot", "true", name);
        }
    }
}
