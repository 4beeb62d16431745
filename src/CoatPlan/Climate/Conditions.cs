using UnitsNet;

namespace CoatPlan.Climate;

/// <summary>What a hygrometer and a surface thermometer would read at one minute.</summary>
/// <param name="Air">Air temperature.</param>
/// <param name="Humidity">Relative humidity, more than 0 and at most 1.</param>
/// <param name="DewPoint">Dew point, never above the air.</param>
/// <param name="Surface">Temperature of the metal; that of the air where no piece is asked about.</param>
public sealed record Conditions(Temperature Air, Ratio Humidity, Temperature DewPoint, Temperature Surface);
