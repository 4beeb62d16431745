namespace CoatPlan.Jobs;

/// <summary>A map of values.</summary>
/// <param name="Entries">Keys, each once, and their values in order.</param>
public sealed record MapValue(ImmutableArray<KeyValuePair<string, JobValue>> Entries) : JobValue
{
    /// <summary>The value of a key; null: none.</summary>
    /// <param name="key">The key.</param>
    public JobValue? Find(string key) => Entries.FirstOrDefault(entry => entry.Key == key).Value;
}
