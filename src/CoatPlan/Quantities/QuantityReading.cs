namespace CoatPlan.Quantities;

/// <summary>A quantity that was read, or why it could not be.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Value">The quantity; <c>default</c> where there is trouble.</param>
/// <param name="Trouble">What is wrong; null: nothing.</param>
public readonly record struct QuantityReading<T>(T Value, QuantityTrouble? Trouble)
{
    /// <summary>Whether a quantity was read.</summary>
    public bool Ok => Trouble is null;
}
