using CoatPlan.Quantities;
using CsCheck;
using UnitsNet;

namespace CoatPlan.Tests.Quantities;

public sealed class QuantityTextTests
{
    [Theory]
    [InlineData("6 in", 6)]
    [InlineData("6in", 6)]
    [InlineData("6\"", 6)]
    [InlineData("6 ″", 6)]
    [InlineData("3 inch", 3)]
    [InlineData("1/2 in", 0.5)]
    [InlineData("3 1/4 in", 3.25)]
    [InlineData("3-1/4 in", 3.25)]
    [InlineData("½ in", 0.5)]
    [InlineData("6½ in", 6.5)]
    [InlineData("6 ft", 72)]
    [InlineData("6 ft 2 in", 74)]
    [InlineData("6' 2\"", 74)]
    [InlineData("6′2″", 74)]
    [InlineData("1,152 in", 1152)]
    [InlineData("1 mil", 0.001)]
    [InlineData("25.4 µm", 0.001)]
    [InlineData("25.4 μm", 0.001)]
    [InlineData("25.4um", 0.001)]
    [InlineData("25.4 microns", 0.001)]
    [InlineData("25.4 mm", 1)]
    [InlineData("2.54cm", 1)]
    [InlineData("0.0254 m", 1)]
    [InlineData("+6 in.", 6)]
    [InlineData("  6   in  ", 6)]
    [InlineData("6\u00A0in", 6)]
    [InlineData("6e0 in", 6)]
    [InlineData(".5 in", 0.5)]
    public void Everyday_lengths_are_read(string text, double inches) =>
        QuantityText.Length(text).Value.Inches.ShouldBe(inches, 1e-9, text);

    [Theory]
    [InlineData("8 ft2", 8)]
    [InlineData("8ft2", 8)]
    [InlineData("8 ft²", 8)]
    [InlineData("8 ft^2", 8)]
    [InlineData("8 sq ft", 8)]
    [InlineData("8 sq. ft.", 8)]
    [InlineData("8 sqft", 8)]
    [InlineData("8 square feet", 8)]
    [InlineData("6 1/2 sq ft", 6.5)]
    [InlineData("1,152 in2", 8)]
    [InlineData("0.09290304 m2", 1)]
    [InlineData("929.0304 cm²", 1)]
    public void Everyday_areas_are_read(string text, double squareFeet) =>
        QuantityText.Area(text).Value.SquareFeet.ShouldBe(squareFeet, 1e-9, text);

    // US customary: 1 gal = 231 in3 exactly, 4 quarts, 8 pints, 128 fluid ounces (NIST Handbook 44, appendix C).
    [Theory]
    [InlineData("1 gal", 3785.411784)]
    [InlineData("1 qt", 946.352946)]
    [InlineData("1 pt", 473.176473)]
    [InlineData("1 pint", 473.176473)]
    [InlineData("1 fl oz", 29.5735295625)]
    [InlineData("1 fl. oz.", 29.5735295625)]
    [InlineData("400 mL", 400)]
    [InlineData("400ml", 400)]
    [InlineData("0.4 L", 400)]
    [InlineData("400 cc", 400)]
    public void Pints_quarts_and_gallons_are_us_customary(string text, double millilitres) =>
        QuantityText.Volume(text).Value.Milliliters.ShouldBe(millilitres, 1e-6, text);

    [Theory]
    [InlineData("62F", 62)]
    [InlineData("62 F", 62)]
    [InlineData("62 °F", 62)]
    [InlineData("62°F", 62)]
    [InlineData("62 ° F", 62)]
    [InlineData("62 deg F", 62)]
    [InlineData("62 degrees Fahrenheit", 62)]
    [InlineData("62 ºF", 62)]
    [InlineData("62℉", 62)]
    [InlineData("20 °C", 68)]
    [InlineData("20c", 68)]
    [InlineData("-40 °C", -40)]
    [InlineData("−40 °C", -40)]
    [InlineData("293.15 K", 68)]
    public void Temperatures_are_read(string text, double fahrenheit) =>
        QuantityText.Temperature(text).Value.DegreesFahrenheit.ShouldBe(fahrenheit, 1e-9, text);

    [Theory]
    [InlineData("3 °C", 3)]
    [InlineData("5.4 °F", 3)]
    [InlineData("3 K", 3)]
    public void A_difference_of_temperatures_has_no_zero_point(string text, double kelvin) =>
        QuantityText.TemperatureDelta(text).Value.Kelvins.ShouldBe(kelvin, 1e-9, text);

    [Theory]
    [InlineData("30 min", 30)]
    [InlineData("1 h", 60)]
    [InlineData("1 h 30 min", 90)]
    [InlineData("1h30m", 90)]
    [InlineData("1 h and 30 min", 90)]
    [InlineData("1.5 hours", 90)]
    [InlineData("1 1/2 h", 90)]
    [InlineData("24 h", 1440)]
    [InlineData("2 d", 2880)]
    [InlineData("90 s", 1.5)]
    [InlineData("1 d 2 h 3 min", 1563)]
    [InlineData("0 min", 0)]
    public void Durations_are_read(string text, double minutes) =>
        QuantityText.Duration(text).Value.ShouldBe(Duration.FromMinutes(minutes), text);

    [Fact]
    public void Other_quantities_are_read()
    {
        QuantityText.Flow("800 ft3/min").Value.CubicFeetPerMinute.ShouldBe(800, 1e-9);
        QuantityText.Flow("800 cfm").Value.CubicFeetPerMinute.ShouldBe(800, 1e-9);
        QuantityText.Flow("10 m³/min").Value.CubicMetersPerMinute.ShouldBe(10, 1e-9);
        QuantityText.Flow("800 cubic feet per minute").Value.CubicFeetPerMinute.ShouldBe(800, 1e-9);
        QuantityText.Pressure("132 psi").Value.PoundsForcePerSquareInch.ShouldBe(132, 1e-9);
        QuantityText.Pressure("1.1 bar").Value.Kilopascals.ShouldBe(110, 1e-9);
        QuantityText.Density("0.79 kg/L").Value.KilogramsPerCubicMeter.ShouldBe(790, 1e-9);
        QuantityText.Density("0.79 g/mL").Value.KilogramsPerCubicMeter.ShouldBe(790, 1e-9);
        QuantityText.Mass("12 oz").Value.Grams.ShouldBe(340.19427750, 1e-6);
        QuantityText.Mass("1 lb 4 oz").Value.Ounces.ShouldBe(20, 1e-9);
        QuantityText.Ratio("10 %").Value.DecimalFractions.ShouldBe(0.1, 1e-12);
        QuantityText.Ratio("10%").Value.DecimalFractions.ShouldBe(0.1, 1e-12);
        QuantityText.Ratio("12.5 percent").Value.DecimalFractions.ShouldBe(0.125, 1e-12);
        QuantityText.MoneyPerHour("85 /h").Value.ShouldBe(85m);
        QuantityText.MoneyPerHour("85.50 per hour").Value.ShouldBe(85.50m);
        QuantityText.MoneyPerHour("85/hr").Value.ShouldBe(85m);
        QuantityText.Angle("90°").Value.Degrees.ShouldBe(90, 1e-9);
        QuantityText.Angle("90 deg").Value.Degrees.ShouldBe(90, 1e-9);
        QuantityText.Speed("10 mph").Value.MilesPerHour.ShouldBe(10, 1e-9);
        QuantityText.Number("0.93").Value.ShouldBe(0.93);
        QuantityText.Money("9.50").Value.ShouldBe(9.50m);
    }

    [Theory]
    [InlineData("50-90 °F", 50, 90)]
    [InlineData("50 – 90 °F", 50, 90)]
    [InlineData("50 to 90 °F", 50, 90)]
    [InlineData("50 °F-90 °F", 50, 90)]
    [InlineData("-10-50 °F", -10, 50)]
    [InlineData("-10 - -5 °F", -10, -5)]
    [InlineData("10-20 °C", 50, 68)]
    public void Ranges_take_the_unit_of_their_second_end(string text, double least, double most)
    {
        var range = QuantityText.TemperatureRange(text).Value;

        range.Least!.Value.DegreesFahrenheit.ShouldBe(least, 1e-9);
        range.Most!.Value.DegreesFahrenheit.ShouldBe(most, 1e-9);
    }

    [Fact]
    public void A_range_may_mix_units_and_sums()
    {
        var range = QuantityText.DurationRange("10 min-1 h 30 min").Value;

        range.ShouldBe(new(Duration.FromMinutes(10), Duration.FromMinutes(90)));
    }

    [Fact]
    public void A_range_may_be_open_at_one_end()
    {
        QuantityText.RatioRange("< 5 %").Value.Least.ShouldBeNull();
        QuantityText.RatioRange("at most 85 %").Value.Most!.Value.Percent.ShouldBe(85, 1e-9);
        QuantityText.RatioRange("≥ 10 %").Value.Most.ShouldBeNull();
        QuantityText.RatioRange("10 - <25 %").Value.Most!.Value.Percent.ShouldBe(25, 1e-9);
    }

    [Theory]
    [InlineData("", QuantityTroubleKind.Empty)]
    [InlineData("big", QuantityTroubleKind.NotANumber)]
    [InlineData("6", QuantityTroubleKind.NoUnit)]
    [InlineData("6 furlongs", QuantityTroubleKind.UnknownUnit)]
    [InlineData("6 ft2", QuantityTroubleKind.WrongDimension)]
    [InlineData("6 %", QuantityTroubleKind.WrongDimension)]
    [InlineData("1,5 m", QuantityTroubleKind.Comma)]
    [InlineData("1,52 m", QuantityTroubleKind.Comma)]
    [InlineData("1152,000 m", QuantityTroubleKind.Comma)]
    [InlineData("1/0 in", QuantityTroubleKind.DividedByZero)]
    [InlineData("1e999 in", QuantityTroubleKind.TooLarge)]
    [InlineData("6-7 in", QuantityTroubleKind.Range)]
    [InlineData("6 in, about", QuantityTroubleKind.Trailing)]
    [InlineData("NaN in", QuantityTroubleKind.NotANumber)]
    [InlineData("∞ in", QuantityTroubleKind.NotANumber)]
    public void What_is_wrong_with_a_length_is_told_apart(string text, QuantityTroubleKind kind) =>
        QuantityText.Length(text).Trouble!.Kind.ShouldBe(kind, text);

    [Fact]
    public void An_ounce_is_no_volume_and_a_degree_no_temperature()
    {
        QuantityText.Volume("12 oz").Trouble!.Found.ShouldBe(Dimension.Mass);
        QuantityText.Temperature("70°").Trouble!.Kind.ShouldBe(QuantityTroubleKind.BareDegree);
        QuantityText.TemperatureRange("90-50 °F").Trouble!.Kind.ShouldBe(QuantityTroubleKind.RangeReversed);
        QuantityText.Duration("1 h 30").Trouble!.Kind.ShouldBe(QuantityTroubleKind.NoUnit);
    }

    [Fact]
    public void A_figure_stays_the_figure_that_was_written() =>
        QuantityText.Area("8.1 ft2").Value.ShouldBe(Area.FromSquareFeet(8.1));

    [Fact]
    public void No_text_makes_it_throw()
    {
        var text = Gen.OneOf(
            Gen.String,
            Gen.OneOf("1", "2,5", " ", "-", "/", "ft2", "in", "°F", "h", "%", "e9", ".", "½", "to ", "< ", "9999999999999999", "µm")
                .Array[0, 8].Select(string.Concat));

        text.Sample(t =>
        {
            QuantityText.Length(t);
            QuantityText.Mass(t);
            QuantityText.Duration(t);
            QuantityText.TemperatureRange(t);
            QuantityText.RatioRange(t);
            QuantityText.MoneyPerHour(t);
            QuantityText.Money(t);
            QuantityText.DimensionOf(t);
        });
    }
}
