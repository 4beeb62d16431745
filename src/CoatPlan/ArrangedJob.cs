using CoatPlan.Areas;
using CoatPlan.Paint;
using CoatPlan.Prep;
using CoatPlan.Timetable;

namespace CoatPlan;

/// <summary>A job with its work arranged in time.</summary>
/// <param name="Ready">The job.</param>
/// <param name="Surfaces">Its surfaces, measured.</param>
/// <param name="Sequence">What is done around its coats.</param>
/// <param name="Coats">Its coats.</param>
/// <param name="Settled">When all of it is done.</param>
internal sealed record ArrangedJob(
    ReadyJob Ready, ImmutableArray<MeasuredSurface> Surfaces, Sequence Sequence, Coats Coats, Settled Settled)
{
    /// <summary>How far the search went; only a full one asks what stands in the way of a job that cannot be.</summary>
    public SearchDepth Depth { get; init; } = SearchDepth.Quick;
}
