using CoatPlan.Problems;

namespace CoatPlan.Presets;

/// <summary>The labels of a job, or everything that keeps them from being complete.</summary>
/// <param name="Labels">Null where there are problems.</param>
/// <param name="Problems">Each with line and column of the job file; empty where all is well.</param>
public sealed record LabelsReading(Labels? Labels, ImmutableArray<Problem> Problems);
