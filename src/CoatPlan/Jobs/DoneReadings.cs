using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>What was read while something was done; null: not read.</summary>
public sealed record DoneReadings
{
    /// <summary>Air temperature.</summary>
    public Temperature? Air { get; init; }

    /// <summary>Temperature of the metal.</summary>
    public Temperature? Metal { get; init; }

    /// <summary>Relative humidity, 0 to 1.</summary>
    public Ratio? Humidity { get; init; }

    /// <summary>Dry film of the coat itself, without what lies below it; a thicker one than the label's dries slower.</summary>
    public Length? Film { get; init; }
}
