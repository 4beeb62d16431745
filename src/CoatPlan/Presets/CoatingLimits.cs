using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>Between which air, surface and humidity a coat may go on.</summary>
/// <param name="AirLow">Least air temperature.</param>
/// <param name="AirHigh">Highest air temperature.</param>
/// <param name="SurfaceLow">Least surface temperature.</param>
/// <param name="SurfaceHigh">Highest surface temperature.</param>
/// <param name="HumidityLow">Least relative humidity, 0 where there is none.</param>
/// <param name="HumidityHigh">Highest relative humidity, up to 1.</param>
/// <param name="AboveDew">How far the surface must stay above the dew point.</param>
public sealed record CoatingLimits(
    Temperature AirLow, Temperature AirHigh, Temperature SurfaceLow, Temperature SurfaceHigh,
    Ratio HumidityLow, Ratio HumidityHigh, TemperatureDelta AboveDew);
