using CoatPlan.Presets;
using CoatPlan.Quantities;

namespace CoatPlan.Prep;

/// <summary>The heat that a film needs to cure.</summary>
internal static class StagedHeat
{
    /// <summary>The longest cure among surfaces: each stage held, with a cooling between two; hot work goes on all that time.</summary>
    public static OperationWait Longest(ImmutableArray<SettledSurface> surfaces, Catalogue catalogue, QuantityFormat format)
    {
        var label = surfaces.SelectMany(surface => surface.Layers).Select(layer => layer.Label).Where(label => !label.Cure.IsEmpty)
            .MaxBy(label => Time(label, catalogue));
        return label is null
            ? OperationWait.None
            : new OperationWait(
                WaitKind.Dwell,
                Time(label, catalogue),
                $"{label.Name} to cure: {string.Join(", ", label.Cure.Select(stage => $"{format.Temperature(stage.At)} for {(long)stage.For.TotalMinutes} min"))}, cooled between",
                "label or class of the product");
    }

    private static Duration Time(Label label, Catalogue catalogue) =>
        label.Cure.Aggregate(Duration.Zero, (sum, stage) => sum + stage.For)
            + (catalogue.Figures.Time("cool-between-heats") * (label.Cure.Length - 1));
}
