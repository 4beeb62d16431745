namespace CoatPlan.Jobs;

/// <summary>The units in which a plan is printed.</summary>
public enum PrintUnits
{
    /// <summary>Feet, ounces, degrees Fahrenheit.</summary>
    Us,

    /// <summary>Metres, millilitres, degrees Celsius.</summary>
    Metric,
}
