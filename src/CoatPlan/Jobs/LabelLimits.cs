using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>Within which air, surface and humidity a product may be put on; null: not said.</summary>
public sealed record LabelLimits
{
    /// <summary>Range of air temperature.</summary>
    public QuantityRange<Temperature>? Air { get; init; }

    /// <summary>Range of surface temperature.</summary>
    public QuantityRange<Temperature>? Surface { get; init; }

    /// <summary>Range of relative humidity, 0 to 1; a single figure is the most.</summary>
    public QuantityRange<Ratio>? Humidity { get; init; }

    /// <summary>Least distance of the surface above the dew point.</summary>
    public TemperatureDelta? AboveDew { get; init; }
}
