namespace CoatPlan.Jobs;

/// <summary>What a missed recoat window asks.</summary>
public enum MissedRework
{
    /// <summary>Scuff once the film is dry through.</summary>
    Scuff,

    /// <summary>Wait for the next window.</summary>
    Wait,

    /// <summary>Strip and begin again.</summary>
    Strip,
}
