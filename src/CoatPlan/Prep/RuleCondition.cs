namespace CoatPlan.Prep;

/// <summary>When a rule holds.</summary>
/// <param name="When">Each key must have one of its words.</param>
/// <param name="Unless">No key may have any of its words.</param>
internal sealed record RuleCondition(
    ImmutableSortedDictionary<string, ImmutableArray<string>> When,
    ImmutableSortedDictionary<string, ImmutableArray<string>> Unless)
{
    // Every rule is asked of every surface: a plain array is walked much faster than a tree.
    private readonly (TraitKey Key, ImmutableArray<string> Words)[] wanted = [.. When.Select(pair => (new TraitKey(pair.Key), pair.Value))];
    private readonly (TraitKey Key, ImmutableArray<string> Words)[] unwanted = [.. Unless.Select(pair => (new TraitKey(pair.Key), pair.Value))];

    /// <summary>Whether the rule holds for what is known.</summary>
    public bool Holds(Traits traits)
    {
        foreach (var (key, words) in wanted)
        {
            if (!traits.HasAny(key, words))
                return false;
        }

        foreach (var (key, words) in unwanted)
        {
            if (traits.HasAny(key, words))
                return false;
        }

        return true;
    }

    /// <summary>Whether the rule asks about a key.</summary>
    public bool Asks(string key) => When.ContainsKey(key) || Unless.ContainsKey(key);

    /// <summary>The words of a key that made the rule hold; all of the key's words where the rule does not ask.</summary>
    public IEnumerable<string> Found(string key, Traits traits) =>
        When.TryGetValue(key, out var words) ? traits[key].Where(word => words.Contains(word, StringComparer.Ordinal)) : traits[key];
}
