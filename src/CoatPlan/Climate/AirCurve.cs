using UnitsNet;

namespace CoatPlan.Climate;

/// <summary>The air in the work place as a function of time.</summary>
/// <remarks>
/// A garage held at 62 °F on a night of 40 °F is at 62 °F with the water of the night: warm and dry. Where the heater burns openly and must be
/// off, the 22 °F it gave are lost with the place's own time constant. Heaters neither dry the air nor dampen it here.
/// </remarks>
public sealed class AirCurve
{
    /// <summary>Below this the heater's rest, or what it lacks, no longer counts, K.</summary>
    private const double Settled = 1e-3;

    private readonly Heater heater;
    private readonly double fade;
    private readonly ImmutableArray<HeaterOff> offs;
    private readonly Days<WeatherDay> weather;
    private readonly Days<AirDay> days;

    internal AirCurve(Days<WeatherDay> weather, Heater heater, ImmutableArray<HeaterOff> offs)
    {
        this.weather = weather;
        this.heater = heater;
        fade = heater.CoolsInMinutes is { } minutes ? Math.Exp(-1 / minutes) : 0;
        this.offs = heater.IsOpen ? offs : [];
        days = new Days<AirDay>(Next);
    }

    /// <summary>The heater that this air owes its warmth to.</summary>
    internal Heater Heater => heater;

    /// <summary>The air at a minute.</summary>
    /// <param name="minute">Minutes from the job's start; one before it counts as the start.</param>
    public Conditions At(int minute)
    {
        var (day, index) = Split(minute);
        return At(minute, days[day].Celsius[index]);
    }

    /// <summary>The air at a minute, and a piece in it of a temperature, °C.</summary>
    internal Conditions At(int minute, double surfaceCelsius)
    {
        var (day, index) = Split(minute);
        return new Conditions(
            Temperature.FromDegreesCelsius(days[day].Celsius[index]),
            Ratio.FromDecimalFractions(days[day].Relative[index]),
            Temperature.FromDegreesCelsius(days[day].DewCelsius[index]),
            Temperature.FromDegreesCelsius(surfaceCelsius));
    }

    internal AirDay Day(int day) => days[day];

    /// <summary>The day a minute is in and the minute's place in it.</summary>
    internal static (int Day, int Index) Split(int minute) => minute <= 0
        ? (0, 0)
        : (minute / Days<AirDay>.Minutes, minute % Days<AirDay>.Minutes);

    private AirDay Next(int day, AirDay? before)
    {
        var outside = weather[day];
        var lift = Lift(day, outside, before);
        if (before is not null && ReferenceEquals(before.Weather, outside) && Same(before.LiftKelvin, lift))
        {
            return before;
        }

        var celsius = new double[outside.Celsius.Length];
        var relative = new double[celsius.Length];
        var dew = new double[celsius.Length];
        for (var i = 0; i < celsius.Length; i++)
        {
            celsius[i] = outside.Celsius[i] + (lift is null ? 0 : lift[i]);
            relative[i] = Humidity.RelativeFraction(celsius[i], outside.VapourPascals[i]);
            dew[i] = Math.Min(celsius[i], outside.DewCelsius[i]);
        }

        return new AirDay(outside, celsius, relative, dew, lift);
    }

    private double[]? Lift(int day, WeatherDay outside, AirDay? before)
    {
        if (heater.HoldCelsius is null)
        {
            return null;
        }

        var lift = new double[outside.Celsius.Length];
        var first = day * Days<AirDay>.Minutes;
        lift[0] = before?.LiftKelvin?[^1] ?? heater.LiftAt(outside.Celsius[0]);
        for (var i = 1; i < lift.Length; i++)
        {
            lift[i] = StepLift(lift[i - 1], outside.Celsius[i], first + i);
        }

        return lift;
    }

    private double StepLift(double lift, double weatherCelsius, int minute)
    {
        var target = heater.LiftAt(weatherCelsius);
        if (offs.IsEmpty)
        {
            return target;
        }

        if (IsOff(minute - 1))
        {
            return Faded(lift);
        }

        return WasOff(minute - 1) && target - lift > Settled ? target - Faded(target - lift) : target;
    }

    /// <summary>What is left, one minute later, of a difference that fades with the place's own time constant.</summary>
    internal double Faded(double kelvin) => kelvin <= Settled ? 0 : kelvin * fade;

    private bool IsOff(int minute)
    {
        foreach (var off in offs)
        {
            if (off.From <= minute && (off.Until is null || minute < off.Until))
            {
                return true;
            }
        }

        return false;
    }

    private bool WasOff(int minute)
    {
        foreach (var off in offs)
        {
            if (off.From <= minute)
            {
                return true;
            }
        }

        return false;
    }

    private static bool Same(double[]? one, double[]? other) =>
        one is null ? other is null : other is not null && one.AsSpan().SequenceEqual(other);
}
