namespace CoatPlan.Quantities;

/// <summary>A text taken apart: one value or two ends of a range, each a sum of terms such as <c>1 h 30 min</c>.</summary>
/// <param name="First">The value, or the first end.</param>
/// <param name="Second">The second end; empty: not a range.</param>
/// <param name="Bound">-1: at most the value; 1: at least the value; 0: the value itself.</param>
internal readonly record struct ScannedQuantity(ImmutableArray<QuantityTerm> First, ImmutableArray<QuantityTerm> Second, int Bound)
{
    public bool IsRange => !Second.IsDefaultOrEmpty;
}
