using CoatPlan.Presets;

namespace CoatPlan.Prep;

/// <summary>Which operations rules ask for, given what is known.</summary>
internal static class Settling
{
    /// <summary>The operations that hold, by word, and what is known once they are settled.</summary>
    /// <remarks>
    /// Rules that ask what is done, or whether it makes dust, are judged after all others: a blow-off follows from sanding. The mildest way
    /// stands first in the file; the last of those asked for is done.
    /// </remarks>
    public static (IReadOnlyDictionary<string, SettledOperation> Operations, Traits Known) Settle(
        Traits traits, PrepRules rules, Catalogue catalogue)
    {
        var first = new HashSet<PrepRule>(ReferenceEqualityComparer.Instance);
        var asked = new List<PrepRule>();
        foreach (var rule in rules.Rules)
        {
            if (rule.Follows || !rule.Condition.Holds(traits))
                continue;

            first.Add(rule);
            if (rule.Why is not null)
                asked.Add(rule);
        }

        var known = traits
            .With(SettledTraits.Does, asked.Select(rule => rule.Operation))
            .Saying(SettledTraits.Dust, asked.GroupBy(rule => rule.Operation).Any(word => MakesDust(word.Key, word, rules, catalogue)));
        var holding = rules.Rules.Where(rule => rule.Follows ? rule.Condition.Holds(known) : first.Contains(rule)).ToArray();

        var operations = holding
            .Where(rule => rule.Why is not null)
            .GroupBy(rule => rule.Operation)
            .Select(word => new SettledOperation(
                word.Key,
                Strongest(word.Key, word, rules),
                [.. word],
                [.. holding.Where(rule => rule.Operation == word.Key && rule.Note is not null)]))
            .ToDictionary(operation => operation.Word, StringComparer.Ordinal);
        return (operations, known);
    }

    private static bool MakesDust(string word, IEnumerable<PrepRule> asking, PrepRules rules, Catalogue catalogue) =>
        Strongest(word, asking, rules)?.Dust ?? catalogue.Operation(word).MakesDust;

    private static PrepWay? Strongest(string word, IEnumerable<PrepRule> asking, PrepRules rules)
    {
        var wanted = asking.Select(rule => rule.Way).ToHashSet(StringComparer.Ordinal);
        return rules.Ways.LastOrDefault(way => way.Operation == word && wanted.Contains(way.Way))
            ?? rules.Ways.FirstOrDefault(way => way.Operation == word);
    }
}
