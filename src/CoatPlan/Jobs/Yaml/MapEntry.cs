namespace CoatPlan.Jobs.Yaml;

/// <summary>A key and its value.</summary>
internal sealed record MapEntry(TextNode Key, Node Value)
{
    /// <summary>Where the value stands.</summary>
    public Stretch At { get; init; } = new(Value.Start, Value.End, IsAlias: false);
}
