namespace CoatPlan.Plans;

/// <summary>Something the person must be told.</summary>
/// <param name="Code">A stable code.</param>
/// <param name="Text">What to do, with the reason in this job.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record PlanCaution(string Code, string Text, string Source);
