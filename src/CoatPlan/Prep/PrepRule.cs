namespace CoatPlan.Prep;

/// <summary>A row of prep.yaml: when an operation is done, which way, and why; or a note on it.</summary>
internal sealed record PrepRule
{
    public required string Id { get; init; }

    /// <summary>The contract's word.</summary>
    public required string Operation { get; init; }

    /// <summary>Which of its ways; null: its only one.</summary>
    public required string? Way { get; init; }

    /// <summary>Whether it only keeps wet what other rows ask for: the way they ask for is done as its <see cref="PrepWay.Wet"/>.</summary>
    public required bool KeepsWet { get; init; }

    /// <summary>Whether the operation is done because of it.</summary>
    public bool Asks => Why is not null && !KeepsWet;

    public required RuleCondition Condition
    {
        get;
        init
        {
            field = value;
            Follows = value.Asks(SettledTraits.Does) || value.Asks(SettledTraits.Dust);
        }
    }

    /// <summary>Why, with names in braces; null for a row that only adds a note.</summary>
    public required string? Why { get; init; }

    /// <summary>What to mind, with names in braces; null: nothing.</summary>
    public required string? Note { get; init; }

    /// <summary>Id of a wait that follows; null: the way's own.</summary>
    public required string? Wait { get; init; }

    public required string Source { get; init; }

    public required string Status { get; init; }

    /// <summary>Whether it is judged after the others because it asks what they settled.</summary>
    public bool Follows { get; private init; }

    /// <summary>Where it stands among the rules, from 0: reasons are told in their order.</summary>
    public int Place { get; init; }
}
