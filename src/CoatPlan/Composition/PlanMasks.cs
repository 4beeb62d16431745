using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Prep;

namespace CoatPlan.Composition;

/// <summary>What is masked, as the plan shows it: what the job names, and what is around a surface sprayed in place for which it names nothing.</summary>
internal static class PlanMasks
{
    private const string Surroundings = "all that is around it";

    public static ImmutableArray<PlanMask> Of(Job job, Sequence sequence)
    {
        var around = sequence.Operations.Where(operation => operation.Word == "mask")
            .SelectMany(operation => operation.Masked)
            .Where(item => item.Kind == Masking.Surroundings)
            .ToLookup(item => item.Surface, StringComparer.Ordinal);
        return
        [
            .. job.Surfaces.SelectMany(surface => surface.Masks.Select(mask => new PlanMask(surface.Id, mask.What, mask.Kind, mask.Edge?.Meters, mask.Area?.SquareMeters))
                .Concat(around[surface.Id].Select(item => new PlanMask(surface.Id, Surroundings, null, item.Edge.Meters / surface.Count, item.Area.SquareMeters / surface.Count)))),
        ];
    }
}
