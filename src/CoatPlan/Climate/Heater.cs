namespace CoatPlan.Climate;

/// <summary>What keeps the place at a least temperature.</summary>
/// <param name="HoldCelsius">The least air temperature it keeps; null without a heater.</param>
/// <param name="CoolsInMinutes">Time constant with which the air loses what an open heater gave it, more than 0; null for a heater that keeps working.</param>
internal sealed record Heater(double? HoldCelsius, double? CoolsInMinutes)
{
    /// <summary>No heater.</summary>
    public static Heater None { get; } = new(null, null);

    /// <summary>Whether the heater must be off while there is vapour.</summary>
    public bool IsOpen => HoldCelsius is not null && CoolsInMinutes is not null;

    /// <summary>Kelvin by which a heater that is on lifts the air.</summary>
    /// <param name="weatherCelsius">The air without it.</param>
    public double LiftAt(double weatherCelsius) => HoldCelsius is { } hold ? Math.Max(0, hold - weatherCelsius) : 0;
}
