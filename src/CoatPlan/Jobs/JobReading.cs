using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>A job that was read, or everything that is wrong with its text.</summary>
/// <param name="Job">The job; null: there are problems.</param>
/// <param name="Problems">What is wrong, in the order of the text; empty: nothing.</param>
public sealed record JobReading(Job? Job, ImmutableArray<Problem> Problems)
{
    /// <summary>What the text holds under which key; null: there are problems.</summary>
    internal JobSections? Sections { get; init; }

    /// <summary>The weather, which may name another file; null: it could not be read, or none of the job could.</summary>
    internal Weather? Weather { get; init; }
}
