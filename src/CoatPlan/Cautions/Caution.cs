namespace CoatPlan.Cautions;

/// <summary>Something a person must be told for this job.</summary>
/// <param name="Code">Short and stable, as in <c>rags-oil</c>.</param>
/// <param name="Text">What it is, on what in this job, and what to do.</param>
/// <param name="Source">Where it comes from, with its status.</param>
public sealed record Caution(string Code, string Text, string Source);
