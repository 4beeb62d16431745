namespace CoatPlan.Climate;

/// <summary>What a day adds to drying.</summary>
/// <param name="Air">The air it was computed from.</param>
/// <param name="Metal">The surface it was computed from.</param>
/// <param name="Before">Done before the day.</param>
/// <param name="Sums">Done since the day's first minute, never falling, 1441 values.</param>
/// <param name="FirstRate">Rate at the day's first minute.</param>
internal sealed record DryingDay(AirDay Air, double[] Metal, double Before, double[] Sums, double FirstRate);
