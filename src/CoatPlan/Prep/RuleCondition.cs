namespace CoatPlan.Prep;

/// <summary>When a rule holds.</summary>
/// <param name="When">Each key must have one of its words.</param>
/// <param name="Unless">No key may have any of its words.</param>
internal sealed record RuleCondition(
    ImmutableSortedDictionary<string, ImmutableArray<string>> When,
    ImmutableSortedDictionary<string, ImmutableArray<string>> Unless)
{
    /// <summary>Whether the rule holds for what is known.</summary>
    public bool Holds(Traits traits) => When.All(pair => Meets(traits, pair)) && !Unless.Any(pair => Meets(traits, pair));

    /// <summary>Whether the rule asks about a key.</summary>
    public bool Asks(string key) => When.ContainsKey(key) || Unless.ContainsKey(key);

    /// <summary>The words of a key that made the rule hold; all of the key's words where the rule does not ask.</summary>
    public IEnumerable<string> Found(string key, Traits traits) =>
        When.TryGetValue(key, out var wanted) ? traits[key].Where(word => wanted.Contains(word, StringComparer.Ordinal)) : traits[key];

    private static bool Meets(Traits traits, KeyValuePair<string, ImmutableArray<string>> pair) =>
        pair.Value.Any(word => traits.Has(pair.Key, word));
}
