namespace CoatPlan.Scheduling;

/// <summary>From which end of an activity a wait is counted.</summary>
public enum Anchor
{
    /// <summary>From its start.</summary>
    Start,

    /// <summary>From its end.</summary>
    End,
}
