namespace CoatPlan.Obstacles;

/// <summary>Rules that are tried together first, and one by one only where that helped: the air before the label of one product before one of its limits.</summary>
/// <param name="Rules">All the rules, at least one.</param>
/// <param name="Parts">The parts they fall into; empty for a single rule.</param>
internal sealed record RuleNode(ImmutableArray<ObstacleRule> Rules, ImmutableArray<RuleNode> Parts)
{
    /// <summary>A rule by itself.</summary>
    public static RuleNode Of(ObstacleRule rule) => new([rule], []);

    /// <summary>Several parts; a single one stands for itself, none are null.</summary>
    public static RuleNode? Of(IEnumerable<RuleNode?> parts)
    {
        ImmutableArray<RuleNode> known = [.. parts.OfType<RuleNode>()];
        return known.Length switch
        {
            0 => null,
            1 => known[0],
            _ => new RuleNode([.. known.SelectMany(part => part.Rules)], known),
        };
    }
}
