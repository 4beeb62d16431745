using CoatPlan.Paint;
using CoatPlan.Plans;

namespace CoatPlan.Composition;

/// <summary>Layers and weighed cans as the plan shows them.</summary>
internal static class PlanLayers
{
    public static ImmutableArray<PlanLayer> Of(Coats coats) => [.. coats.Layers.Select(Of)];

    public static ImmutableArray<PlanWeighed> Of(ImmutableArray<WeighedCan> weighed) =>
    [
        .. weighed.Select(can => new PlanWeighed(
            can.Product, can.After.Surfaces, can.After.Layer!.Value, can.After.Coat!.Value, can.Left, can.Next, can.Rest)),
    ];

    private static PlanLayer Of(SurfaceLayer layer) => new(
        layer.Surface.Id,
        layer.Layer,
        layer.Label.Key,
        layer.Coats.Coats,
        layer.Coats.ByJob,
        layer.Coats.LabelLeast,
        layer.Coats.LabelMost,
        layer.Coats.ForHiding,
        layer.Primer?.Word,
        layer.Primer?.Coats,
        layer.Label.DryFilm?.Micrometers * layer.Coats.Coats,
        WetFilm.OnThePart(layer.Label)?.Micrometers)
    {
        OnlyBare = layer.Share.DecimalFractions < 1,
    };
}
