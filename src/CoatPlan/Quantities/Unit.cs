namespace CoatPlan.Quantities;

/// <summary>A unit that a person may write.</summary>
/// <param name="Dimension">What it measures.</param>
/// <param name="Name">The unit of the quantity type; null where <paramref name="Factor"/> says it.</param>
/// <param name="Factor">Seconds for a duration; 1 elsewhere.</param>
internal sealed record Unit(Dimension Dimension, Enum? Name, double Factor = 1);
