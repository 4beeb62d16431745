namespace CoatPlan.Jobs.Reading;

/// <summary>The keys that a map may have.</summary>
internal sealed record KeyTable(string What, ImmutableArray<KeySpec> Keys)
{
    /// <summary>What the keys must agree in, as a list in JSON Schema; the reader checks the same in its own words.</summary>
    public string Agreeing { get; init; } = "[]";

    /// <summary>Keys that stand one map further in, in that of any key here; empty: none is known to every one of them.</summary>
    public ImmutableArray<string> Inside { get; init; } = [];

    /// <summary>The key of a name; null: the map has none such.</summary>
    public KeySpec? Find(string name) => Keys.FirstOrDefault(key => key.Name == name);
}
