using CoatPlan.Areas;
using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Prep;
using CoatPlan.Presets;

namespace CoatPlan;

/// <summary>What is to be done on a job, not yet when.</summary>
/// <param name="Surfaces">Its surfaces, measured.</param>
/// <param name="Sequence">What is done around its coats.</param>
/// <param name="Coats">Its coats.</param>
internal sealed record PreparedJob(ImmutableArray<MeasuredSurface> Surfaces, Sequence Sequence, Coats Coats)
{
    /// <summary>Prepares a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="labels">The labels of its products.</param>
    /// <param name="trade">What the trade knows.</param>
    public static PreparedJob Of(Job job, Labels labels, Trade trade)
    {
        var surfaces = SurfaceAreas.Measure(job, trade.Catalogue);
        return new PreparedJob(surfaces, PrepSequence.Build(job, trade.Catalogue, labels, surfaces, trade.Prep), PaintWork.Of(job, surfaces, labels, trade.Catalogue));
    }
}
