using UnitsNet;
using UnitsNet.Units;

namespace CoatPlan.Quantities;

/// <summary>Reads quantities as people write them: <c>8 ft2</c>, <c>3 1/4 in</c>, <c>1 h 30 min</c>, <c>50-90 °F</c>.</summary>
/// <remarks>
/// A number, an optional space, a unit. Fractions, thousands commas, sums of the same kind and everyday spellings work;
/// a bare number where a unit is due is trouble. Pint, quart, gallon and fluid ounce are US customary, <c>oz</c> is mass.
/// Nothing depends on a culture, and no text makes these functions throw except null.
/// </remarks>
public static class QuantityText
{
    /// <summary>Reads a length such as <c>6 in</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<Length> Length(string text) => One(text, Dimension.Length, LengthOf);

    /// <summary>Reads an area such as <c>8 ft2</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<Area> Area(string text) =>
        One(text, Dimension.Area, terms => Single(terms, (v, u) => UnitsNet.Area.From(v, (AreaUnit)u)));

    /// <summary>Reads a volume such as <c>400 mL</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<Volume> Volume(string text) =>
        One(text, Dimension.Volume, terms => Single(terms, (v, u) => UnitsNet.Volume.From(v, (VolumeUnit)u)));

    /// <summary>Reads a mass such as <c>12 oz</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<Mass> Mass(string text) => One(text, Dimension.Mass, MassOf);

    /// <summary>Reads a temperature such as <c>70 °F</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<Temperature> Temperature(string text) => One(text, Dimension.Temperature, TemperatureOf);

    /// <summary>Reads a difference of temperatures such as <c>3 °C</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<TemperatureDelta> TemperatureDelta(string text) =>
        One(text, Dimension.Temperature, terms => Single(terms, (v, u) => UnitsNet.TemperatureDelta.From(v, DeltaUnit((TemperatureUnit)u))));

    /// <summary>Reads a duration such as <c>1 h 30 min</c>, to the millisecond.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<Duration> Duration(string text) => One(text, Dimension.Duration, DurationOf);

    /// <summary>Reads a share with its sign, such as <c>10 %</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<Ratio> Ratio(string text) => One(text, Dimension.Ratio, RatioOf);

    /// <summary>Reads an air flow such as <c>800 ft3/min</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<VolumeFlow> Flow(string text) =>
        One(text, Dimension.Flow, terms => Single(terms, (v, u) => VolumeFlow.From(v, (VolumeFlowUnit)u)));

    /// <summary>Reads a pressure such as <c>132 psi</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<Pressure> Pressure(string text) =>
        One(text, Dimension.Pressure, terms => Single(terms, (v, u) => UnitsNet.Pressure.From(v, (PressureUnit)u)));

    /// <summary>Reads a density such as <c>0.79 kg/L</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<Density> Density(string text) =>
        One(text, Dimension.Density, terms => Single(terms, (v, u) => UnitsNet.Density.From(v, (DensityUnit)u)));

    /// <summary>Reads money for an hour, such as <c>85 /h</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<decimal> MoneyPerHour(string text) =>
        One(text, Dimension.MoneyPerHour, terms => terms.Length == 1 ? MoneyOf(terms[0].Number) : null);

    /// <summary>Reads an angle such as <c>90°</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<Angle> Angle(string text) =>
        One(text, Dimension.Angle, terms => Single(terms, (v, u) => UnitsNet.Angle.From(v, (AngleUnit)u)));

    /// <summary>Reads a speed such as <c>10 mph</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<Speed> Speed(string text) =>
        One(text, Dimension.Speed, terms => Single(terms, (v, u) => UnitsNet.Speed.From(v, (SpeedUnit)u)));

    /// <summary>Reads a bare number such as <c>0.93</c> or <c>1,250</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<double> Number(string text) =>
        One<double>(text, Dimension.None, terms => terms.Length == 1 ? terms[0].Number : null);

    /// <summary>Reads a sum of money without its currency, such as <c>9.50</c>.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<decimal> Money(string text) =>
        One(text, Dimension.None, terms => terms.Length == 1 ? MoneyOf(terms[0].Number) : null);

    /// <summary>Reads a range of temperatures such as <c>50-90 °F</c>; a single figure is both ends, <c>at least 50 °F</c> leaves one open.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<QuantityRange<Temperature>> TemperatureRange(string text) =>
        Two(text, Dimension.Temperature, TemperatureOf, (a, b) => a.Kelvins.CompareTo(b.Kelvins));

    /// <summary>Reads a range of shares such as <c>10-25 %</c>; a single figure is both ends, <c>&lt; 5 %</c> leaves one open.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<QuantityRange<Ratio>> RatioRange(string text) =>
        Two(text, Dimension.Ratio, RatioOf, (a, b) => a.DecimalFractions.CompareTo(b.DecimalFractions));

    /// <summary>Reads a range of durations such as <c>10 min-1 h</c>; a single figure is both ends.</summary>
    /// <param name="text">The text.</param>
    public static QuantityReading<QuantityRange<Duration>> DurationRange(string text) =>
        Two(text, Dimension.Duration, DurationOf, (a, b) => a.CompareTo(b));

    /// <summary>What the unit of a text measures, whatever was due; null: the text is no quantity.</summary>
    /// <param name="text">The text.</param>
    public static Dimension? DimensionOf(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var scanned = QuantityScanner.Scan(text, Dimension.None);
        return scanned.Ok ? scanned.Value.First[^1].Unit?.Dimension ?? Dimension.None : null;
    }

    private static QuantityReading<T> One<T>(string text, Dimension due, Func<ImmutableArray<QuantityTerm>, T?> value)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(text);
        var scanned = QuantityScanner.Scan(text, due);
        if (scanned.Trouble is { } trouble) return new(default, trouble);
        if (scanned.Value.IsRange || scanned.Value.Bound != 0) return new(default, new(QuantityTroubleKind.Range, due, text));
        return Value(text, due, scanned.Value.First, value);
    }

    private static QuantityReading<QuantityRange<T>> Two<T>(
        string text, Dimension due, Func<ImmutableArray<QuantityTerm>, T?> value, Comparison<T> compare)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(text);
        var scanned = QuantityScanner.Scan(text, due);
        if (scanned.Trouble is { } trouble) return new(default, trouble);
        var first = Value(text, due, scanned.Value.First, value);
        if (!first.Ok) return new(default, first.Trouble);
        if (!scanned.Value.IsRange)
        {
            int bound = scanned.Value.Bound;
            return new(new(bound < 0 ? null : first.Value, bound > 0 ? null : first.Value), null);
        }

        var second = Value(text, due, scanned.Value.Second, value);
        if (!second.Ok) return new(default, second.Trouble);
        if (compare(first.Value, second.Value) > 0) return new(default, new(QuantityTroubleKind.RangeReversed, due, text));
        return new(new(first.Value, second.Value), null);
    }

    private static QuantityReading<T> Value<T>(
        string text, Dimension due, ImmutableArray<QuantityTerm> terms, Func<ImmutableArray<QuantityTerm>, T?> value)
        where T : struct
    {
        foreach (var term in terms)
        {
            var found = term.Unit?.Dimension ?? Dimension.None;
            if (found == due) continue;
            if (found == Dimension.None) return new(default, new(QuantityTroubleKind.NoUnit, due, text));
            bool bareDegree = due == Dimension.Temperature && found == Dimension.Angle;
            var kind = bareDegree ? QuantityTroubleKind.BareDegree : QuantityTroubleKind.WrongDimension;
            return new(default, new(kind, due, text, found));
        }

        return value(terms) is { } result
            ? new(result, null)
            : new(default, new(terms.Length > 1 ? QuantityTroubleKind.Trailing : QuantityTroubleKind.TooLarge, due, text));
    }

    private static T? Single<T>(ImmutableArray<QuantityTerm> terms, Func<double, Enum, T> from)
        where T : struct => terms.Length == 1 ? from(terms[0].Number, terms[0].Unit!.Name!) : null;

    // A sum such as "6 ft 2 in" is kept in its last, finest unit, so that a figure written in one unit stays that very figure.
    private static Length? LengthOf(ImmutableArray<QuantityTerm> terms)
    {
        var unit = (LengthUnit)terms[^1].Unit!.Name!;
        double sum = terms.Sum(term => UnitsNet.Length.From(term.Number, (LengthUnit)term.Unit!.Name!).As(unit));
        return double.IsFinite(sum) ? UnitsNet.Length.From(sum, unit) : null;
    }

    private static Mass? MassOf(ImmutableArray<QuantityTerm> terms)
    {
        var unit = (MassUnit)terms[^1].Unit!.Name!;
        double sum = terms.Sum(term => UnitsNet.Mass.From(term.Number, (MassUnit)term.Unit!.Name!).As(unit));
        return double.IsFinite(sum) ? UnitsNet.Mass.From(sum, unit) : null;
    }

    private static Temperature? TemperatureOf(ImmutableArray<QuantityTerm> terms) =>
        Single(terms, (v, u) => UnitsNet.Temperature.From(v, (TemperatureUnit)u));

    private static Ratio? RatioOf(ImmutableArray<QuantityTerm> terms) =>
        Single(terms, (v, u) => UnitsNet.Ratio.From(v, (RatioUnit)u));

    private static Duration? DurationOf(ImmutableArray<QuantityTerm> terms)
    {
        const double LongestSeconds = 1e10;
        double seconds = terms.Sum(term => term.Number * term.Unit!.Factor);
        if (Math.Abs(seconds) > LongestSeconds) return null;
        return NodaTime.Duration.FromMilliseconds((long)Math.Round(seconds * 1000, MidpointRounding.AwayFromZero));
    }

    private static decimal? MoneyOf(double number)
    {
        const double MostMoney = 1e12;
        return Math.Abs(number) > MostMoney ? null : (decimal)number;
    }

    private static TemperatureDeltaUnit DeltaUnit(TemperatureUnit unit) => unit switch
    {
        TemperatureUnit.DegreeFahrenheit => TemperatureDeltaUnit.DegreeFahrenheit,
        TemperatureUnit.DegreeCelsius => TemperatureDeltaUnit.DegreeCelsius,
        _ => TemperatureDeltaUnit.Kelvin,
    };
}
