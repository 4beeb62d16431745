using CoatPlan.Paint;
using CoatPlan.Plans;
using CoatPlan.Presets;
using CoatPlan.Supplies;
using CoatPlan.Vapour;

namespace CoatPlan.Composition;

/// <summary>What is bought, as the plan shows it.</summary>
internal static class PlanSupplies
{
    public static ImmutableArray<PlanSupply> Of(ImmutableArray<PaintSupply> supplies, Figures figures) => [.. supplies.Select(supply => Of(supply, figures))];

    public static ImmutableArray<PlanConsumable> Of(ImmutableArray<ConsumableNeed> needs) =>
    [
        .. needs.Select(need => new PlanConsumable(need.Item, need.Amount, need.Unit, need.Why)
        {
            Word = need.Word,
            Needed = need.Needed,
            Pack = need.Pack,
            Packs = need.Packs,
            Price = need.Price,
        }),
    ];

    private static PlanSupply Of(PaintSupply supply, Figures figures) => new(
        supply.Demand.Label.Key,
        supply.Demand.Label.Name,
        supply.Demand.LikelyVolume?.Milliliters,
        supply.Demand.AreaCoats.SquareMeters,
        supply.Demand.Cans,
        supply.Demand.CansLow,
        supply.Demand.CansHigh,
        supply.Buy,
        supply.Price,
        supply.Demand.Basis == DemandBasis.Covers ? PlanBasis.Covers : PlanBasis.Solids,
        [.. supply.Demand.Covered.Select(covered => new PlanCovered(covered.Packages, covered.Share))])
    {
        Pack = supply.Demand.Label.Pack,
        Packs = supply.Packs,
        Sessions = supply.Demand.Sessions,
        ClearedCans = supply.Demand.Sessions * supply.Demand.Label.Method.SetupLoss.DecimalFractions,
        OzonePerCanG = OzoneForming.Of(supply.Demand.Label, figures)?.PerPackage?.Grams,
        PanelM2 = figures.Area("test-panel").SquareMeters,
        PanelGrams = PackageReach.Of(supply.Demand.Label).Area is { } reach && supply.Demand.Label.NetMass is { } net
            ? net.Grams * (figures.Area("test-panel") / reach)
            : null,
    };
}
