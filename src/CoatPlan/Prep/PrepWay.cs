namespace CoatPlan.Prep;

/// <summary>A row of prep.yaml: one way in which an operation is done.</summary>
internal sealed record PrepWay
{
    public required string Operation { get; init; }

    public required string Way { get; init; }

    /// <summary>What to do, in the imperative.</summary>
    public required string Title { get; init; }

    /// <summary>Name of the operation's rate; null: by condition.</summary>
    public required string? Rate { get; init; }

    /// <summary>Whether only the bare share of the area is worked on.</summary>
    public required bool OnlyBare { get; init; }

    /// <summary>Whether it makes dust; null: as the operation does.</summary>
    public required bool? Dust { get; init; }

    /// <summary>The way that does the same kept wet; null: there is none, or this is wet.</summary>
    public required string? Wet { get; init; }

    /// <summary>Whether it makes sparks; null: as the operation does.</summary>
    public required bool? Hot { get; init; }

    /// <summary>Id of the wait that follows; null: none.</summary>
    public required string? Wait { get; init; }

    /// <summary>Grits one after another.</summary>
    public required ImmutableArray<string> Grits { get; init; }
}
