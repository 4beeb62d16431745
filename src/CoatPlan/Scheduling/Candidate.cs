namespace CoatPlan.Scheduling;

/// <summary>What a schedule is generated from.</summary>
/// <param name="Ranks">For each activity its place in the order in which they are taken.</param>
/// <param name="Windows">For each link the one window to use, so that what it is counted from comes later until it is open; <see cref="AnyWindow"/> or <see cref="NoLastResort"/>.</param>
internal readonly record struct Candidate(int[] Ranks, int[] Windows)
{
    /// <summary>Whichever window starts earliest.</summary>
    public const int AnyWindow = -1;

    /// <summary>Whichever window starts earliest that is no last resort.</summary>
    public const int NoLastResort = -2;

    /// <summary>For each activity a minute before which it does not start, null for one that may start at any; null where all may.</summary>
    public ImmutableArray<int?>? NotBefore { get; init; }
}
