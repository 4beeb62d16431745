using System.Collections.Frozen;
using UnitsNet.Units;

namespace CoatPlan.Quantities;

/// <summary>The spellings of units, in lower case, with plain digits for powers and <c>u</c> for micro.</summary>
/// <remarks>Pint, quart, gallon and fluid ounce are US customary; <c>oz</c> is mass.</remarks>
internal static class UnitTable
{
    private static readonly (Unit Unit, string Spellings)[] Rows =
    [
        Row(Dimension.Length, LengthUnit.Inch, "in|inch|inches|\"|''"),
        Row(Dimension.Length, LengthUnit.Foot, "ft|foot|feet|'"),
        Row(Dimension.Length, LengthUnit.Yard, "yd|yard|yards"),
        Row(Dimension.Length, LengthUnit.Mil, "mil|mils|thou"),
        Row(Dimension.Length, LengthUnit.Micrometer, "um|micron|microns|micrometre|micrometer|micrometres|micrometers"),
        Row(Dimension.Length, LengthUnit.Millimeter, "mm|millimetre|millimeter|millimetres|millimeters"),
        Row(Dimension.Length, LengthUnit.Centimeter, "cm|centimetre|centimeter|centimetres|centimeters"),
        Row(Dimension.Length, LengthUnit.Meter, "m|metre|meter|metres|meters"),

        Row(Dimension.Area, AreaUnit.SquareInch, "in2|sq in|sqin|square inch|square inches|sq inch|sq inches"),
        Row(Dimension.Area, AreaUnit.SquareFoot, "ft2|sq ft|sqft|square foot|square feet|sq foot|sq feet|sf"),
        Row(Dimension.Area, AreaUnit.SquareYard, "yd2|sq yd|sqyd|square yard|square yards"),
        Row(Dimension.Area, AreaUnit.SquareMillimeter, "mm2|sq mm|sqmm|square millimetre|square millimetres|square millimeter|square millimeters"),
        Row(Dimension.Area, AreaUnit.SquareCentimeter, "cm2|sq cm|sqcm|square centimetre|square centimetres|square centimeter|square centimeters"),
        Row(Dimension.Area, AreaUnit.SquareDecimeter, "dm2|sq dm|square decimetre|square decimetres|square decimeter|square decimeters"),
        Row(Dimension.Area, AreaUnit.SquareMeter, "m2|sq m|sqm|square metre|square metres|square meter|square meters"),

        Row(Dimension.Volume, VolumeUnit.UsOunce, "fl oz|floz|fluid ounce|fluid ounces|fl ounce|fl ounces|us fl oz"),
        Row(Dimension.Volume, VolumeUnit.UsPint, "pt|pint|pints|us pt|us pint|us pints"),
        Row(Dimension.Volume, VolumeUnit.UsQuart, "qt|quart|quarts|us qt|us quart|us quarts"),
        Row(Dimension.Volume, VolumeUnit.UsGallon, "gal|gallon|gallons|us gal|us gallon|us gallons"),
        Row(Dimension.Volume, VolumeUnit.CubicInch, "in3|cu in|cubic inch|cubic inches"),
        Row(Dimension.Volume, VolumeUnit.CubicFoot, "ft3|cu ft|cuft|cubic foot|cubic feet|cf"),
        Row(Dimension.Volume, VolumeUnit.CubicYard, "yd3|cu yd|cubic yard|cubic yards"),
        Row(Dimension.Volume, VolumeUnit.Milliliter, "ml|cc|cm3|millilitre|millilitres|milliliter|milliliters|cubic centimetre|cubic centimetres|cubic centimeter|cubic centimeters"),
        Row(Dimension.Volume, VolumeUnit.Centiliter, "cl|centilitre|centilitres|centiliter|centiliters"),
        Row(Dimension.Volume, VolumeUnit.Deciliter, "dl|decilitre|decilitres|deciliter|deciliters"),
        Row(Dimension.Volume, VolumeUnit.Liter, "l|litre|litres|liter|liters|dm3"),
        Row(Dimension.Volume, VolumeUnit.CubicMeter, "m3|cu m|cubic metre|cubic metres|cubic meter|cubic meters"),

        Row(Dimension.Mass, MassUnit.Ounce, "oz|ounce|ounces|oz wt|wt oz|net wt oz"),
        Row(Dimension.Mass, MassUnit.Pound, "lb|lbs|pound|pounds"),
        Row(Dimension.Mass, MassUnit.Milligram, "mg|milligram|milligrams"),
        Row(Dimension.Mass, MassUnit.Gram, "g|gram|grams|gramme|grammes"),
        Row(Dimension.Mass, MassUnit.Kilogram, "kg|kilogram|kilograms|kilo|kilos"),

        Row(Dimension.Temperature, TemperatureUnit.DegreeFahrenheit, "°f|° f|f|f°|deg f|degf|degree f|degrees f|fahrenheit|deg fahrenheit|degrees fahrenheit"),
        Row(Dimension.Temperature, TemperatureUnit.DegreeCelsius, "°c|° c|c|c°|deg c|degc|degree c|degrees c|celsius|deg celsius|degrees celsius|centigrade"),
        Row(Dimension.Temperature, TemperatureUnit.Kelvin, "k|kelvin|kelvins"),

        Seconds(1, "s|sec|secs|second|seconds"),
        Seconds(60, "min|mins|minute|minutes"),
        Seconds(3600, "h|hr|hrs|hour|hours"),
        Seconds(86400, "d|day|days"),
        Seconds(604800, "week|weeks|wk|wks"),

        Row(Dimension.Ratio, RatioUnit.Percent, "%|percent|per cent|pct"),

        Row(Dimension.Flow, VolumeFlowUnit.CubicFootPerMinute, "ft3/min|cfm|cu ft/min|cubic feet/minute|cubic feet/min|cubic foot/minute"),
        Row(Dimension.Flow, VolumeFlowUnit.CubicFootPerHour, "ft3/h|ft3/hr|cfh"),
        Row(Dimension.Flow, VolumeFlowUnit.CubicFootPerSecond, "ft3/s|cfs"),
        Row(Dimension.Flow, VolumeFlowUnit.CubicMeterPerMinute, "m3/min|cubic metres/minute|cubic meters/minute|cmm"),
        Row(Dimension.Flow, VolumeFlowUnit.CubicMeterPerHour, "m3/h|m3/hr|cubic metres/hour|cubic meters/hour|cmh"),
        Row(Dimension.Flow, VolumeFlowUnit.CubicMeterPerSecond, "m3/s|cubic metres/second|cubic meters/second"),
        Row(Dimension.Flow, VolumeFlowUnit.LiterPerSecond, "l/s|litres/second|liters/second"),
        Row(Dimension.Flow, VolumeFlowUnit.LiterPerMinute, "l/min|litres/minute|liters/minute"),

        Row(Dimension.Pressure, PressureUnit.PoundForcePerSquareInch, "psi|lb/in2|lbf/in2|lb/sq in|psig|pounds/square inch"),
        Row(Dimension.Pressure, PressureUnit.Pascal, "pa|pascal|pascals"),
        Row(Dimension.Pressure, PressureUnit.Hectopascal, "hpa"),
        Row(Dimension.Pressure, PressureUnit.Kilopascal, "kpa|kilopascal|kilopascals"),
        Row(Dimension.Pressure, PressureUnit.Megapascal, "mpa"),
        Row(Dimension.Pressure, PressureUnit.Millibar, "mbar|millibar"),
        Row(Dimension.Pressure, PressureUnit.Bar, "bar|bars"),
        Row(Dimension.Pressure, PressureUnit.Atmosphere, "atm"),
        Row(Dimension.Pressure, PressureUnit.InchOfMercury, "inhg|in hg"),
        Row(Dimension.Pressure, PressureUnit.MillimeterOfMercury, "mmhg|mm hg"),
        Row(Dimension.Pressure, PressureUnit.KilogramForcePerSquareCentimeter, "kg/cm2|kgf/cm2"),

        Row(Dimension.Density, DensityUnit.GramPerMilliliter, "g/ml|g/cc|g/cm3"),
        Row(Dimension.Density, DensityUnit.KilogramPerLiter, "kg/l|kg/dm3"),
        Row(Dimension.Density, DensityUnit.GramPerLiter, "g/l"),
        Row(Dimension.Density, DensityUnit.KilogramPerCubicMeter, "kg/m3"),
        Row(Dimension.Density, DensityUnit.PoundPerUSGallon, "lb/gal|lbs/gal|lb/us gal|pounds/gallon"),
        Row(Dimension.Density, DensityUnit.PoundPerCubicFoot, "lb/ft3|lbs/ft3"),

        (new Unit(Dimension.MoneyPerHour, null), "/h|/hr|/hour|an hour"),

        Row(Dimension.Angle, AngleUnit.Degree, "°|deg|degree|degrees"),
        Row(Dimension.Angle, AngleUnit.Radian, "rad|radian|radians"),

        Row(Dimension.Speed, SpeedUnit.MilePerHour, "mph|mi/h|miles/hour"),
        Row(Dimension.Speed, SpeedUnit.KilometerPerHour, "km/h|kmh|kph"),
        Row(Dimension.Speed, SpeedUnit.MeterPerSecond, "m/s"),
        Row(Dimension.Speed, SpeedUnit.FootPerMinute, "ft/min|fpm"),
        Row(Dimension.Speed, SpeedUnit.FootPerSecond, "ft/s|fps"),
        Row(Dimension.Speed, SpeedUnit.Knot, "kn|kt|knot|knots"),
    ];

    private static readonly FrozenDictionary<string, Unit> BySpelling = Rows
        .SelectMany(row => row.Spellings.Split('|').Select(spelling => (spelling, row.Unit)))
        .ToFrozenDictionary(pair => pair.spelling, pair => pair.Unit, StringComparer.Ordinal);

    private static readonly int LongestSpelling = BySpelling.Keys.Max(spelling => spelling.Length);

    /// <summary>The longest unit that stands at a place of a text, so that <c>in2</c> is not read as <c>in</c>.</summary>
    /// <param name="text">The text in plain form (see <see cref="QuantityScanner"/>).</param>
    /// <param name="start">Where the unit begins.</param>
    /// <returns>The unit and how many characters it takes; null: no known unit stands there.</returns>
    public static (Unit Unit, int Length)? LongestAt(string text, int start)
    {
        for (int length = Math.Min(LongestSpelling, text.Length - start); length > 0; length--)
        {
            int end = start + length;
            if (end < text.Length && char.IsLetter(text[end - 1]) && char.IsLetter(text[end])) continue;
            if (end < text.Length && char.IsDigit(text[end - 1]) && char.IsLetterOrDigit(text[end])) continue;
            if (BySpelling.TryGetValue(text.Substring(start, length), out var unit)) return (unit, length);
        }

        return null;
    }

    /// <summary>The spellings of the units of one dimension, for a suggestion.</summary>
    /// <param name="dimension">What the units measure.</param>
    public static IEnumerable<string> SpellingsOf(Dimension dimension) =>
        Rows.Where(row => row.Unit.Dimension == dimension).SelectMany(row => row.Spellings.Split('|'));

    private static (Unit Unit, string Spellings) Row(Dimension dimension, Enum name, string spellings) =>
        (new Unit(dimension, name), spellings);

    private static (Unit Unit, string Spellings) Seconds(double seconds, string spellings) =>
        (new Unit(Dimension.Duration, null, seconds), spellings);
}
