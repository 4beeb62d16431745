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
        var holds = new bool[rules.Rules.Length];
        var does = ImmutableArray.CreateBuilder<string>();
        foreach (var rule in rules.Rules)
        {
            holds[rule.Place] = !rule.Follows && rule.Condition.Holds(traits);
            if (holds[rule.Place] && rule.Asks && !does.Contains(rule.Operation))
                does.Add(rule.Operation);
        }

        var known = new TraitsBuilder(traits)
            .With(SettledTraits.Does, does.ToImmutable())
            .Saying(SettledTraits.Dust, MakesDust(holds, rules, catalogue))
            .Done();
        foreach (var rule in rules.Rules)
        {
            if (rule.Follows)
                holds[rule.Place] = rule.Condition.Holds(known);
        }

        return (Operations(holds, rules), known);
    }

    private static Dictionary<string, SettledOperation> Operations(bool[] holds, PrepRules rules)
    {
        var operations = new Dictionary<string, SettledOperation>(StringComparer.Ordinal);
        foreach (var operation in rules.ByOperation)
        {
            if (!operation.IsAsked(holds))
                continue;

            operations.Add(operation.Word, new SettledOperation(
                operation.Word,
                operation.Way(holds),
                Holding(operation, holds, rule => rule.Why is not null),
                Holding(operation, holds, rule => rule.Note is not null)));
        }

        return operations;
    }

    private static bool MakesDust(bool[] holds, PrepRules rules, Catalogue catalogue)
    {
        foreach (var operation in rules.ByOperation)
        {
            if (operation.IsAsked(holds) && (operation.Way(holds)?.Dust ?? catalogue.Operation(operation.Word).MakesDust))
                return true;
        }

        return false;
    }

    private static ImmutableArray<PrepRule> Holding(OperationRules operation, bool[] holds, Func<PrepRule, bool> wanted) =>
        [.. operation.Rules.Where(rule => holds[rule.Place] && wanted(rule))];
}
