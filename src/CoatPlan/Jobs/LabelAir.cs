using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>The air at which a label's times hold.</summary>
public sealed record LabelAir
{
    /// <summary>Air temperature; null: 70 °F by the contract.</summary>
    public Temperature? Air { get; init; }

    /// <summary>Relative humidity, 0 to 1; null: 50 % by the contract.</summary>
    public Ratio? Humidity { get; init; }
}
