using CoatPlan.Plans;
using CoatPlan.Presets;
using CoatPlan.Quantities;

namespace CoatPlan.Composition;

/// <summary>Labels as the sheets print them.</summary>
internal static class PlanLabels
{
    public static ImmutableArray<PlanLabel> Of(Labels labels) => [.. labels.All.Select(Of)];

    private static PlanLabel Of(Label label) => new(
        label.Key,
        label.Name,
        label.Hazards,
        label.LabelSays,
        Words(label.Recoat),
        Words(label.Topcoat),
        label.UseWithin is { } potLife ? QuantityFormat.Duration(potLife) : null);

    private static string Words(ImmutableArray<CoatWindow> windows) => string.Join(", or ", windows.Select(Word));

    private static string Word(CoatWindow window) =>
        window.To is { } to
            ? $"{QuantityFormat.Duration(window.From)} to {QuantityFormat.Duration(to)}"
            : $"after {QuantityFormat.Duration(window.From)}";
}
