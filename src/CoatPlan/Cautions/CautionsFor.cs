using CoatPlan.Prep;

namespace CoatPlan.Cautions;

/// <summary>What a person must be told for a job.</summary>
public static class CautionsFor
{
    /// <summary>The cautions that follow from what is so in a job, in the order of the file; the deferral to label, codes and licensed practice last.</summary>
    /// <param name="facts">What is so.</param>
    /// <param name="texts">The cautions: <see cref="CautionTexts.Standard"/>, or those with a shop's own over them.</param>
    public static ImmutableArray<Caution> Job(CautionFacts facts, CautionTexts texts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(texts);

        var byKey = facts.All.ToLookup(fact => fact.Key, StringComparer.Ordinal);
        var known = byKey
            .Aggregate(new TraitsBuilder(), (traits, key) => traits.With(key.Key, [.. key.Select(fact => fact.Word)]))
            .Done();
        return
        [
            .. texts.Rows
                .Where(row => row.Condition.Holds(known))
                .Select(row => new Caution(row.Code, Sentence.Fill(row.Text, name => Value(name, row, facts, byKey)), row.Source)),
        ];
    }

    private static string? Value(string name, CautionRow row, CautionFacts facts, ILookup<string, CautionFact> byKey) => name switch
    {
        "who" => Sentence.List(Who(row, byKey)),
        "items" => Sentence.List(facts.Ignition),
        _ => null,
    };

    /// <summary>Names on which every key was found that is found on names at all.</summary>
    private static string[] Who(CautionRow row, ILookup<string, CautionFact> facts)
    {
        var byKey = row.Condition.When
            .Select(pair => facts[pair.Key]
                .Where(fact => fact.Who.Length > 0 && pair.Value.Contains(fact.Word, StringComparer.Ordinal))
                .Select(fact => fact.Who)
                .ToArray())
            .Where(names => names.Length > 0)
            .ToArray();
        return byKey.Length == 0 ? [] : byKey.Aggregate((some, others) => [.. some.Intersect(others, StringComparer.Ordinal)]);
    }
}
