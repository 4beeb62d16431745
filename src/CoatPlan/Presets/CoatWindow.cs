namespace CoatPlan.Presets;

/// <summary>A recoat window with both ends settled: when the next coat may go on after the end of the one before.</summary>
/// <remarks>"10 min-1 h, after 24 h" is two windows: the second has no end. At the label's conditions.</remarks>
/// <param name="From">Zero or more.</param>
/// <param name="To">More than <paramref name="From"/>; null: never closes.</param>
public sealed record CoatWindow(Duration From, Duration? To);
