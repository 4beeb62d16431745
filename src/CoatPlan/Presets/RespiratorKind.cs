namespace CoatPlan.Presets;

/// <summary>A kind of respirator with its assigned protection factors.</summary>
/// <remarks>The factors hold only inside a programme with training, fit testing and maintenance.</remarks>
/// <param name="Word">Such as <c>air-purifying</c>.</param>
/// <param name="Title">In words.</param>
/// <param name="SuppliesAir">Whether it brings its own air: what isocyanates ask.</param>
/// <param name="Factors">Mask (quarter, half, full, hood, loose) to factor.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record RespiratorKind(
    string Word, string Title, bool SuppliesAir, ImmutableDictionary<string, int> Factors, Provenance Provenance);
