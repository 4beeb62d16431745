using CoatPlan.Areas;
using CoatPlan.Paint;
using CoatPlan.Prep;

namespace CoatPlan;

/// <summary>What is to be done on a job, not yet when.</summary>
/// <param name="Surfaces">Its surfaces, measured.</param>
/// <param name="Sequence">What is done around its coats.</param>
/// <param name="Coats">Its coats.</param>
internal sealed record PreparedJob(ImmutableArray<MeasuredSurface> Surfaces, Sequence Sequence, Coats Coats);
