namespace CoatPlan.Prep;

/// <summary>The rules of one operation and the ways in which it can be done.</summary>
/// <param name="Word">The contract's word.</param>
/// <param name="Rules">In the order of the file; at least one.</param>
/// <param name="Ways">Mildest first.</param>
internal sealed record OperationRules(string Word, ImmutableArray<PrepRule> Rules, ImmutableArray<PrepWay> Ways)
{
    /// <summary>Rules gathered by their operation, in the order in which each operation comes first.</summary>
    public static ImmutableArray<OperationRules> Of(ImmutableArray<PrepRule> rules, ImmutableArray<PrepWay> ways) =>
    [
        .. rules
            .GroupBy(rule => rule.Operation, StringComparer.Ordinal)
            .Select(word => new OperationRules(word.Key, [.. word], [.. ways.Where(way => way.Operation == word.Key)])),
    ];

    /// <summary>Whether a rule that holds asks for it.</summary>
    /// <param name="holds">For each rule by its place, whether it holds.</param>
    public bool IsAsked(bool[] holds)
    {
        foreach (var rule in Rules)
        {
            if (holds[rule.Place] && rule.Asks)
                return true;
        }

        return false;
    }

    /// <summary>The way that is done: the last of those that rules which hold ask for, the mildest where they name none; kept wet where a rule says so.</summary>
    /// <param name="holds">For each rule by its place, whether it holds.</param>
    public PrepWay? Way(bool[] holds)
    {
        var way = Strongest(holds);
        return way?.Wet is { } wet && Rules.Any(rule => holds[rule.Place] && rule.KeepsWet) ? Ways.First(other => other.Way == wet) : way;
    }

    private PrepWay? Strongest(bool[] holds)
    {
        for (var at = Ways.Length - 1; at >= 0; at--)
        {
            foreach (var rule in Rules)
            {
                if (holds[rule.Place] && rule.Asks && rule.Way == Ways[at].Way)
                    return Ways[at];
            }
        }

        return Ways.IsEmpty ? null : Ways[0];
    }
}
