namespace CoatPlan.Jobs;

/// <summary>What a heater does while vapour is in the air.</summary>
public enum HeaterKind
{
    /// <summary>Flame or glowing element: off from the first spray until the vapour is purged.</summary>
    Open,

    /// <summary>Keeps working while vapour is in the air.</summary>
    Sealed,
}
