using CoatPlan.Problems;

namespace CoatPlan;

/// <summary>What came of taking in a job file.</summary>
/// <param name="Ready">The job; null where there are problems.</param>
/// <param name="Problems">Each with its file, line and column; empty where all is well.</param>
public sealed record IntakeResult(ReadyJob? Ready, ImmutableArray<Problem> Problems);
