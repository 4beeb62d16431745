namespace CoatPlan.Scheduling;

/// <summary>What keeps an activity from starting earlier, or at all.</summary>
public enum ReasonKind
{
    /// <summary>Its own release; nothing else.</summary>
    Release,

    /// <summary>A link's least wait.</summary>
    LeastWait,

    /// <summary>A link's windows close before the activity could start.</summary>
    MostWait,

    /// <summary>A resource is in use, or kept by a hold.</summary>
    Resource,

    /// <summary>A resource has less capacity than the activity or hold asks for.</summary>
    Capacity,

    /// <summary>Its hours are closed, or the opening left is too short for it.</summary>
    Hours,

    /// <summary>Its start rule.</summary>
    StartRule,

    /// <summary>It would overlap what another activity leaves, or leave something that another must avoid.</summary>
    Avoidance,

    /// <summary>The horizon ends first.</summary>
    Horizon,

    /// <summary>The waits contradict each other round a cycle.</summary>
    Contradiction,

    /// <summary>Every order tried fails on several rules together; no single one is to blame.</summary>
    Together,
}
