namespace CoatPlan.Prep;

/// <summary>What has to happen, with nobody at work, after an operation and before the next of its surfaces.</summary>
public enum WaitKind
{
    /// <summary>The next operation may begin at once.</summary>
    None,

    /// <summary>Water has to leave the surface; the time follows the air.</summary>
    WashDry,

    /// <summary>A cleaning solvent has to flash off; the time follows the air.</summary>
    SolventFlash,

    /// <summary>A chemical has to act, or a part has to bake or cool; the time is fixed.</summary>
    Dwell,
}
