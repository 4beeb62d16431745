using CoatPlan.Timetable;

namespace CoatPlan;

/// <summary>A job with its work arranged in time.</summary>
/// <param name="Ready">The job.</param>
/// <param name="Settled">When all of it is done.</param>
internal sealed record ArrangedJob(ReadyJob Ready, Settled Settled)
{
    /// <summary>How far the search went; only a full one asks what stands in the way of a job that cannot be.</summary>
    public SearchDepth Depth { get; init; } = SearchDepth.Quick;
}
