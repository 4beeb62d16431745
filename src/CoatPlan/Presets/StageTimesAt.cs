using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>One line of a label's own table of times by temperature.</summary>
/// <param name="Air">The temperature of the line.</param>
/// <param name="Times">Times at that temperature.</param>
/// <param name="Recoat">Windows at that temperature; empty: those of the label scaled.</param>
public sealed record StageTimesAt(Temperature Air, StageTimes Times, ImmutableArray<CoatWindow> Recoat)
{
    /// <summary>Windows for another product at that temperature; empty: those of the label scaled.</summary>
    public ImmutableArray<CoatWindow> Topcoat { get; init; } = [];
}
