using CoatPlan.Jobs;
using CoatPlan.Plans;

namespace CoatPlan.Composition;

/// <summary>What the job names to be masked, as the plan shows it.</summary>
internal static class PlanMasks
{
    public static ImmutableArray<PlanMask> Of(Job job) =>
    [
        .. job.Surfaces.SelectMany(
            surface => surface.Masks,
            (surface, mask) => new PlanMask(surface.Id, mask.What, mask.Kind, mask.Edge?.Meters, mask.Area?.SquareMeters)),
    ];
}
