namespace CoatPlan.Jobs.Yaml;

/// <summary>A sequence.</summary>
internal sealed class ListNode : Node
{
    /// <summary>The items in order.</summary>
    public required ImmutableArray<Node> Items { get; init; }

    /// <summary>Where each item stands, for edits.</summary>
    public ImmutableArray<Stretch> Places { get; init; } = [];

    /// <summary>Whether it stands in brackets.</summary>
    public bool IsFlow { get; init; }
}
