namespace CoatPlan.Jobs;

/// <summary>What a test of the old finish for lead said.</summary>
public enum LeadTestResult
{
    /// <summary>Lead was found.</summary>
    Positive,

    /// <summary>No lead was found.</summary>
    Negative,
}
