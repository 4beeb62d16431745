namespace CoatPlan.Plans;

/// <summary>The label's limits for starting a coat, with which a person compares readings.</summary>
/// <param name="AirLowC">Least air temperature, °C.</param>
/// <param name="AirHighC">Highest air temperature, °C.</param>
/// <param name="SurfaceLowC">Least metal temperature, °C.</param>
/// <param name="SurfaceHighC">Highest metal temperature, °C.</param>
/// <param name="HumidityLow">Least relative humidity, 0 to 1.</param>
/// <param name="HumidityHigh">Highest relative humidity, 0 to 1.</param>
/// <param name="AboveDewC">Least distance of the metal above the dew point, in kelvin.</param>
public sealed record PlanLimits(
    double AirLowC, double AirHighC, double SurfaceLowC, double SurfaceHighC, double HumidityLow, double HumidityHigh, double AboveDewC);
