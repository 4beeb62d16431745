namespace CoatPlan.Sheets.Content;

/// <summary>The air at a moment: a point of each curve, and what is written of it.</summary>
/// <param name="At">Local wall time.</param>
/// <param name="AirC">Air, °C.</param>
/// <param name="MetalC">The coldest piece, °C.</param>
/// <param name="DewPointC">Dew point, °C.</param>
/// <param name="Air">Air in the plan's units, the unit left out.</param>
/// <param name="Metal">The coldest piece, likewise.</param>
/// <param name="DewPoint">Dew point, likewise.</param>
public sealed record TimelineAir(LocalDateTime At, double AirC, double MetalC, double DewPointC, string Air, string Metal, string DewPoint);
