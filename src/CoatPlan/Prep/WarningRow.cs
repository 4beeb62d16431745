namespace CoatPlan.Prep;

/// <summary>A row of warnings.yaml.</summary>
internal sealed record WarningRow
{
    public required string Id { get; init; }

    /// <summary>The contract's code.</summary>
    public required string Code { get; init; }

    /// <summary>surface, product or job.</summary>
    public required string About { get; init; }

    /// <summary>Which product of the system it names beside a surface: top, over or first; null: none.</summary>
    public required string? Product { get; init; }

    public required RuleCondition Condition { get; init; }

    /// <summary>The sentences, with names in braces.</summary>
    public required string Text { get; init; }

    public required string Source { get; init; }

    /// <summary>How well the source vouches for it; empty: the judgement that raised it says.</summary>
    public required string Status { get; init; }

    /// <summary>Whether it is raised where its condition holds, and not by name.</summary>
    public bool ByCondition => !Condition.When.IsEmpty || !Condition.Unless.IsEmpty;
}
