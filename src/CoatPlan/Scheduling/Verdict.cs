namespace CoatPlan.Scheduling;

/// <summary>What is known after a search.</summary>
public enum Verdict
{
    /// <summary>There is a schedule, and none finishes earlier.</summary>
    Optimal,

    /// <summary>There is a schedule; an earlier finish was not ruled out.</summary>
    Found,

    /// <summary>It was proven that there is no schedule.</summary>
    Infeasible,

    /// <summary>No schedule was found, and none was ruled out.</summary>
    NotFound,
}
