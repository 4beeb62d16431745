namespace CoatPlan.Quantities;

/// <summary>Two bounds of the same quantity, either of which may be open: "50-90 °F", "at most 85 %".</summary>
/// <typeparam name="T">The quantity, e.g. a temperature or a ratio.</typeparam>
/// <param name="Least">The lower bound, included; null: open.</param>
/// <param name="Most">The upper bound, included; null: open.</param>
public readonly record struct QuantityRange<T>(T? Least, T? Most)
    where T : struct;
