namespace CoatPlan.Prep;

/// <summary>What a pressure hold says of a cooling system.</summary>
public enum CoolingVerdict
{
    /// <summary>Held at the cap's own rating.</summary>
    Holds,

    /// <summary>Lost more than a gauge's error.</summary>
    Leaks,

    /// <summary>Not held at the cap's own rating, so it says nothing.</summary>
    NotAtCap,

    /// <summary>The cap's rating is not known, so it says nothing.</summary>
    CapUnknown,
}
