namespace CoatPlan.Quantities;

/// <summary>What a unit measures.</summary>
public enum Dimension
{
    /// <summary>A bare number.</summary>
    None,

    /// <summary>Length.</summary>
    Length,

    /// <summary>Area.</summary>
    Area,

    /// <summary>Volume.</summary>
    Volume,

    /// <summary>Mass.</summary>
    Mass,

    /// <summary>Temperature, or a difference of temperatures.</summary>
    Temperature,

    /// <summary>Duration.</summary>
    Duration,

    /// <summary>Ratio.</summary>
    Ratio,

    /// <summary>Volume of air in a time.</summary>
    Flow,

    /// <summary>Pressure.</summary>
    Pressure,

    /// <summary>Density.</summary>
    Density,

    /// <summary>Money for an hour.</summary>
    MoneyPerHour,

    /// <summary>Angle.</summary>
    Angle,

    /// <summary>Speed.</summary>
    Speed,
}
