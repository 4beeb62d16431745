using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Plans;

namespace CoatPlan.Composition;

/// <summary>Paint demand as the plan shows it.</summary>
internal static class PlanSupplies
{
    public static ImmutableArray<PlanSupply> Of(Job job, ImmutableArray<ProductDemand> demand) => [.. demand.Select(one => Of(job, one))];

    private static PlanSupply Of(Job job, ProductDemand demand) => new(
        demand.Label.Key,
        demand.Label.Name,
        demand.LikelyVolume?.Milliliters,
        demand.AreaCoats.SquareMeters,
        demand.Cans,
        demand.CansLow,
        demand.CansHigh,
        demand.Cans,
        null,
        demand.Basis == DemandBasis.Covers ? PlanBasis.Covers : PlanBasis.Solids,
        [.. demand.Covered.Select(covered => new PlanCovered(covered.Packages, covered.Share))]);
}
