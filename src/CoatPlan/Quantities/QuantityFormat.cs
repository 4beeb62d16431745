using System.Globalization;
using UnitsNet;

namespace CoatPlan.Quantities;

/// <summary>Writes quantities for people, in US customary or metric units; the same on every machine.</summary>
/// <remarks>What is written can be read again by <see cref="QuantityText"/>, to the digits that are shown.</remarks>
public sealed class QuantityFormat
{
    private const int ShownDigits = 3;

    private readonly bool metric;

    private QuantityFormat(bool metric) => this.metric = metric;

    /// <summary>Feet, ounces, degrees Fahrenheit.</summary>
    public static QuantityFormat Us { get; } = new(metric: false);

    /// <summary>Metres, millilitres, degrees Celsius.</summary>
    public static QuantityFormat Metric { get; } = new(metric: true);

    /// <summary>An area in ft² or m², e.g. <c>8.25 ft²</c>.</summary>
    /// <param name="area">The area.</param>
    public string Area(Area area) => metric ? $"{Digits(area.SquareMeters)} m²" : $"{Digits(area.SquareFeet)} ft²";

    /// <summary>A length in inches or feet, millimetres or metres, e.g. <c>6 ft</c>; feet and metres from 3 ft and 1 m.</summary>
    /// <param name="length">The length.</param>
    public string Length(Length length)
    {
        if (metric)
        {
            return Math.Abs(length.Meters) < 1 ? $"{Digits(length.Millimeters)} mm" : $"{Digits(length.Meters)} m";
        }

        return Math.Abs(length.Feet) < 3 ? $"{Digits(length.Inches)} in" : $"{Digits(length.Feet)} ft";
    }

    /// <summary>A length that a moving hand keeps, e.g. <c>11 in</c> or <c>280 mm</c>: to half an inch or to 5 mm; below 1 in as any length.</summary>
    /// <param name="length">The length.</param>
    public string ByHand(Length length)
    {
        var step = metric ? UnitsNet.Length.FromMillimeters(5) : UnitsNet.Length.FromInches(0.5);
        var kept = length.Inches < 1 ? length : step * Math.Round(length / step, MidpointRounding.AwayFromZero);
        return Length(kept);
    }

    /// <summary>The thickness of a film in mil or µm, e.g. <c>1.5 mil</c>.</summary>
    /// <param name="thickness">The thickness.</param>
    public string Film(Length thickness) => metric ? $"{Digits(thickness.Micrometers)} µm" : $"{Digits(thickness.Mils)} mil";

    /// <summary>A volume of paint in fl oz or mL, e.g. <c>11.5 fl oz</c>.</summary>
    /// <param name="volume">The volume.</param>
    public string Liquid(Volume volume) => metric ? $"{Digits(volume.Milliliters)} mL" : $"{Digits(volume.UsOunces)} fl oz";

    /// <summary>A volume of air in ft³ or m³, e.g. <c>3,960 ft³</c>.</summary>
    /// <param name="volume">The volume.</param>
    public string Room(Volume volume) => metric ? $"{Digits(volume.CubicMeters)} m³" : $"{Digits(volume.CubicFeet)} ft³";

    /// <summary>A mass in oz or g, e.g. <c>12 oz</c>.</summary>
    /// <param name="mass">The mass.</param>
    public string Mass(Mass mass) => metric ? $"{Digits(mass.Grams)} g" : $"{Digits(mass.Ounces)} oz";

    /// <summary>A temperature in whole °F or °C, e.g. <c>70 °F</c>.</summary>
    /// <param name="temperature">The temperature.</param>
    public string Temperature(Temperature temperature) => metric
        ? $"{Whole(temperature.DegreesCelsius)} °C"
        : $"{Whole(temperature.DegreesFahrenheit)} °F";

    /// <summary>A difference of temperatures in °F or °C with one decimal, e.g. <c>5.4 °F</c>.</summary>
    /// <param name="delta">The difference.</param>
    public string TemperatureDelta(TemperatureDelta delta) => metric
        ? $"{Decimals(delta.DegreesCelsius, 1)} °C"
        : $"{Decimals(delta.DegreesFahrenheit, 1)} °F";

    /// <summary>An air flow in ft³/min or m³/min, e.g. <c>800 ft³/min</c>.</summary>
    /// <param name="flow">The flow.</param>
    public string Flow(VolumeFlow flow) => metric
        ? $"{Digits(flow.CubicMetersPerMinute)} m³/min"
        : $"{Digits(flow.CubicFeetPerMinute)} ft³/min";

    /// <summary>A pressure in psi or kPa, e.g. <c>132 psi</c>.</summary>
    /// <param name="pressure">The pressure.</param>
    public string Pressure(Pressure pressure) => metric
        ? $"{Digits(pressure.Kilopascals)} kPa"
        : $"{Digits(pressure.PoundsForcePerSquareInch)} psi";

    /// <summary>A density in lb/gal or kg/L, e.g. <c>6.59 lb/gal</c>.</summary>
    /// <param name="density">The density.</param>
    public string Density(Density density) => metric
        ? $"{Digits(density.KilogramsPerLiter)} kg/L"
        : $"{Digits(density.PoundsPerUSGallon)} lb/gal";

    /// <summary>A speed in mph or m/s, e.g. <c>10 mph</c>.</summary>
    /// <param name="speed">The speed.</param>
    public string Speed(Speed speed) => metric ? $"{Digits(speed.MetersPerSecond)} m/s" : $"{Digits(speed.MilesPerHour)} mph";

    /// <summary>A share in percent, e.g. <c>10 %</c>.</summary>
    /// <param name="ratio">The share.</param>
    public static string Ratio(Ratio ratio) => $"{Digits(ratio.Percent)} %";

    /// <summary>A duration in days, hours and minutes, e.g. <c>1 h 25 min</c>; under a minute in seconds; days from 48 h.</summary>
    /// <param name="duration">The duration, rounded to the minute, half up.</param>
    public static string Duration(Duration duration)
    {
        if (duration < NodaTime.Duration.Zero) return "-" + Duration(-duration);
        if (duration < NodaTime.Duration.FromMinutes(1))
        {
            double seconds = Math.Round(duration.TotalSeconds, MidpointRounding.AwayFromZero);
            if (seconds is > 0 and < 60) return $"{Whole(seconds)} s";
        }

        const long MinutesOfTwoDays = 48 * 60;
        long minutes = MinutesOf(duration);
        if (minutes < MinutesOfTwoDays) return HoursAndMinutes(minutes);
        return minutes % 1440 == 0 ? $"{Whole(minutes / 1440)} d" : $"{Whole(minutes / 1440)} d {HoursAndMinutes(minutes % 1440)}";
    }

    /// <summary>A time of work in hours and minutes, never in days, e.g. <c>52 h 25 min</c>: what is paid by the hour is multiplied by it.</summary>
    /// <param name="duration">The time, at least 0, rounded to the minute, half up.</param>
    public static string Hours(Duration duration) => HoursAndMinutes(MinutesOf(duration));

    private static long MinutesOf(Duration duration) => (long)Math.Round(duration.TotalMinutes, MidpointRounding.AwayFromZero);

    private static string HoursAndMinutes(long minutes) => (minutes / 60, minutes % 60) switch
    {
        (0, var rest) => $"{Whole(rest)} min",
        (var hours, 0) => $"{Whole(hours)} h",
        var (hours, rest) => $"{Whole(hours)} h {Whole(rest)} min",
    };

    /// <summary>A number with three digits that count, all of them before the point, thousands grouped: <c>0.85</c>, <c>12.5</c>, <c>1,152</c>.</summary>
    /// <param name="value">The number; what is not finite is written as a dash.</param>
    public static string Digits(double value)
    {
        if (!double.IsFinite(value)) return "–";
        if (value == 0) return "0";
        int before = (int)Math.Floor(Math.Log10(Math.Abs(value))) + 1;
        return Decimals(value, Math.Clamp(ShownDigits - before, 0, 9));
    }

    /// <summary>A number with at most so many decimals, half away from zero, thousands grouped, no zeros at the end.</summary>
    /// <param name="value">The number; what is not finite is written as a dash.</param>
    /// <param name="most">Most decimals, 0 to 9.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="most"/> is not 0 to 9.</exception>
    public static string Decimals(double value, int most)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(most);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(most, 9);
        if (!double.IsFinite(value)) return "–";
        double rounded = Math.Round(value, most, MidpointRounding.AwayFromZero);
        if (rounded == 0) return "0";
        return rounded.ToString("#,##0." + new string('#', most), CultureInfo.InvariantCulture);
    }

    private static string Whole(double value) => Decimals(value, 0);
}
