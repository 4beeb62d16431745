namespace CoatPlan.Jobs.Yaml;

/// <summary>A mapping whose keys differ.</summary>
internal sealed class MapNode : Node
{
    private Dictionary<string, MapEntry>? byKey;

    /// <summary>The entries in the order of the text; of a repeated key, the first.</summary>
    public required ImmutableArray<MapEntry> Entries { get; init; }

    /// <summary>Whether it stands in braces.</summary>
    public bool IsFlow { get; init; }

    /// <summary>The entry of a key; null: none.</summary>
    public MapEntry? Find(string key)
    {
        byKey ??= Entries.ToDictionary(entry => entry.Key.Text, StringComparer.Ordinal);
        return byKey.GetValueOrDefault(key);
    }
}
