namespace CoatPlan.Obstacles;

/// <summary>Finds what stands in a job's way: every single rule without which it can be planned, and where there is none a smallest set.</summary>
/// <remarks>
/// A garage at 45 °F and a label from 50 °F: without the label's least air temperature there is a plan, so that is the obstacle. Where the metal is within 3 °C of
/// the dew point too, neither limit helps alone: both together are one obstacle.
/// </remarks>
internal static class ObstacleSearch
{
    /// <summary>The sets of rules; empty where no set was found.</summary>
    public static ImmutableArray<ImmutableArray<ObstacleRule>> Find(ImmutableArray<RuleNode> rules, Trials trials)
    {
        var helping = rules.Where(node => trials.Without(node.Rules) is not null).ToArray();
        return helping.Length > 0
            ? [.. helping.SelectMany(node => Parts(node, trials))]
            : Smallest(rules, trials) is { } set ? [set] : [];
    }

    private static IEnumerable<ImmutableArray<ObstacleRule>> Parts(RuleNode node, Trials trials)
    {
        if (node.Parts.IsEmpty)
            return [node.Rules];

        var helping = node.Parts.Where(part => trials.Without(part.Rules) is not null).ToArray();
        return helping.Length > 0
            ? helping.SelectMany(part => Parts(part, trials))
            : Smallest(node.Parts, trials) is { } set ? [set] : [node.Rules];
    }

    // Whole parts are taken back first, then single rules of what is left: whatever can be kept with the rest left out is no part of the obstacle.
    private static ImmutableArray<ObstacleRule>? Smallest(ImmutableArray<RuleNode> nodes, Trials trials)
    {
        ImmutableArray<ObstacleRule> set = [.. nodes.SelectMany(node => node.Rules)];
        if (trials.Without(set) is null)
            return null;

        foreach (var part in nodes.Concat(nodes.SelectMany(node => node.Parts)))
            set = WithoutThose(set, part.Rules, trials);
        foreach (var rule in set)
            set = WithoutThose(set, [rule], trials);
        return set;
    }

    private static ImmutableArray<ObstacleRule> WithoutThose(ImmutableArray<ObstacleRule> set, ImmutableArray<ObstacleRule> kept, Trials trials)
    {
        ImmutableArray<ObstacleRule> fewer = [.. set.Except(kept)];
        return fewer.Length < set.Length && fewer.Length > 0 && trials.Without(fewer) is not null ? fewer : set;
    }
}
