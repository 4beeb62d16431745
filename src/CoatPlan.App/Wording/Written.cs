using CoatPlan.Jobs;
using CoatPlan.Quantities;
using CoatPlan.Supplies;
using UnitsNet;

namespace CoatPlan.App.Wording;

/// <summary>A plan's figures as a person reads them, in the job's units; always in the invariant culture.</summary>
public static class Written
{
    /// <summary>A temperature, whole degrees.</summary>
    /// <param name="celsius">Degrees Celsius.</param>
    /// <param name="units">The job's units.</param>
    public static string Temperature(double celsius, PrintUnits units) =>
        double.IsFinite(celsius) ? Format(units).Temperature(UnitsNet.Temperature.FromDegreesCelsius(celsius)) : "any";

    /// <summary>A distance between two temperatures.</summary>
    /// <param name="kelvin">The distance in kelvin.</param>
    /// <param name="units">The job's units.</param>
    public static string TemperatureDifference(double kelvin, PrintUnits units) =>
        Format(units).TemperatureDelta(TemperatureDelta.FromDegreesCelsius(kelvin));

    /// <summary>An area.</summary>
    /// <param name="squareMetres">Square metres.</param>
    /// <param name="units">The job's units.</param>
    public static string Area(double squareMetres, PrintUnits units) => Format(units).Area(UnitsNet.Area.FromSquareMeters(squareMetres));

    /// <summary>A length.</summary>
    /// <param name="metres">Metres.</param>
    /// <param name="units">The job's units.</param>
    public static string Length(double metres, PrintUnits units) => Format(units).Length(UnitsNet.Length.FromMeters(metres));

    /// <summary>A length that a moving hand keeps.</summary>
    /// <param name="metres">Metres.</param>
    /// <param name="units">The job's units.</param>
    public static string ByHand(double metres, PrintUnits units) => Format(units).ByHand(UnitsNet.Length.FromMeters(metres));

    /// <summary>A volume of paint.</summary>
    /// <param name="millilitres">Millilitres.</param>
    /// <param name="units">The job's units.</param>
    public static string Paint(double millilitres, PrintUnits units) => Format(units).Liquid(Volume.FromMilliliters(millilitres));

    /// <summary>The volume of a room.</summary>
    /// <param name="cubicMetres">Cubic metres.</param>
    /// <param name="units">The job's units.</param>
    public static string Room(double cubicMetres, PrintUnits units) => Format(units).Room(Volume.FromCubicMeters(cubicMetres));

    /// <summary>A flow of air.</summary>
    /// <param name="cubicMetresPerMinute">Cubic metres a minute.</param>
    /// <param name="units">The job's units.</param>
    public static string AirFlow(double cubicMetresPerMinute, PrintUnits units) => Format(units).Flow(VolumeFlow.FromCubicMetersPerMinute(cubicMetresPerMinute));

    /// <summary>A share, whole per cent; below one per cent, a digit behind the point.</summary>
    /// <param name="share">The share, 1 for all.</param>
    public static string Percent(double share) => $"{Number(share * 100, Math.Abs(share) is > 0 and < 0.01 ? 1 : 0)} %";

    /// <summary>A stretch of minutes: <c>25 min</c>, <c>1 h 10 min</c>, <c>2 d 3 h</c>.</summary>
    /// <param name="minutes">Minutes, 0 or more.</param>
    public static string Minutes(double minutes) => QuantityFormat.Duration(Duration.FromMinutes(minutes));

    /// <summary>An amount of money, with the digits that ISO 4217 gives its currency.</summary>
    /// <param name="amount">The amount.</param>
    /// <param name="currency">ISO 4217 code.</param>
    public static string Money(decimal amount, string currency) =>
        MinorUnits.Write(amount, currency);

    /// <summary>A bare number, trailing zeros left out.</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Digits behind the point at most, 0 or more.</param>
    public static string Number(double value, int decimals) => QuantityFormat.Decimals(value, decimals);

    /// <summary>An amount of what is used up: <c>3 sheets</c>, <c>2 qt</c>, in a metric job <c>1.89 L</c>.</summary>
    /// <param name="amount">How many.</param>
    /// <param name="unit">What one is, as the plan counts it.</param>
    /// <param name="units">The job's units.</param>
    public static string Amount(double amount, string unit, PrintUnits units)
    {
        var (here, shown) = UnitWords.In(amount, unit, units);
        return $"{Number(here, 2)} {UnitWords.Behind(here, shown)}";
    }

    /// <summary>A count with its noun: <c>1 can</c>, <c>3 cans</c>.</summary>
    /// <param name="count">How many.</param>
    /// <param name="one">The noun for one.</param>
    /// <param name="many">The noun for any other number.</param>
    public static string Count(int count, string one, string many) => $"{count} {(count == 1 ? one : many)}";

    private static QuantityFormat Format(PrintUnits units) => units == PrintUnits.Metric ? QuantityFormat.Metric : QuantityFormat.Us;
}
