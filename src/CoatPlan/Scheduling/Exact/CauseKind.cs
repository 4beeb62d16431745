namespace CoatPlan.Scheduling.Exact;

/// <summary>The sorts of cause.</summary>
internal enum CauseKind
{
    /// <summary>The search tried it, or it was given.</summary>
    Decision,

    /// <summary>A clause of which all else is false.</summary>
    Clause,

    /// <summary>A lag, in either direction, or its condition.</summary>
    Lag,

    /// <summary>The activity's own hours and start rule.</summary>
    OwnRule,

    /// <summary>Bounds written down when it happened.</summary>
    Written,
}
