namespace CoatPlan.Scheduling;

/// <summary>What came of generating a schedule; nothing where it was given up.</summary>
internal readonly record struct Generated
{
    /// <summary>The schedule; null where not everything could be placed, or it was given up.</summary>
    public Schedule? Schedule { get; init; }

    /// <summary>Why not everything could be placed.</summary>
    public Blockage? Blockage { get; init; }

    /// <summary>What was placed all the same.</summary>
    public ImmutableArray<Placement?> Placed { get; init; }

    /// <summary>How many were placed, those that no window in use asks for included.</summary>
    public int PlacedCount { get; init; }
}
