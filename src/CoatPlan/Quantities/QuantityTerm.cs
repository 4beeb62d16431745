namespace CoatPlan.Quantities;

/// <summary>A number and the unit behind it, if any.</summary>
internal readonly record struct QuantityTerm(double Number, Unit? Unit);
