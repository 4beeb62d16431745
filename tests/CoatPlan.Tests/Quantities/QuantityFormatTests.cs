using System.Globalization;
using CoatPlan.Quantities;
using CsCheck;
using UnitsNet;

namespace CoatPlan.Tests.Quantities;

public sealed class QuantityFormatTests
{
    [Theory]
    [InlineData(0, "0 min")]
    [InlineData(0.5, "30 s")]
    [InlineData(5, "5 min")]
    [InlineData(60, "1 h")]
    [InlineData(85, "1 h 25 min")]
    [InlineData(1440, "24 h")]
    [InlineData(2880, "2 d")]
    [InlineData(2945, "2 d 1 h 5 min")]
    [InlineData(59.6, "1 h")]
    [InlineData(-5, "-5 min")]
    public void Durations_are_written_in_hours_and_minutes(double minutes, string text) =>
        QuantityFormat.Duration(Duration.FromMinutes(minutes)).ShouldBe(text);

    [Theory]
    [InlineData(0, "0")]
    [InlineData(0.8512, "0.851")]
    [InlineData(12.5, "12.5")]
    [InlineData(125.5, "126")]
    [InlineData(1152, "1,152")]
    [InlineData(0.00012345, "0.000123")]
    [InlineData(-2.5, "-2.5")]
    [InlineData(9.999, "10")]
    [InlineData(double.NaN, "–")]
    public void Three_digits_count(double value, string text) => QuantityFormat.Digits(value).ShouldBe(text);

    [Fact]
    public void The_same_quantity_is_written_in_both_systems()
    {
        QuantityFormat.Us.Area(Area.FromSquareFeet(8)).ShouldBe("8 ft²");
        QuantityFormat.Metric.Area(Area.FromSquareFeet(8)).ShouldBe("0.743 m²");
        QuantityFormat.Us.Temperature(Temperature.FromDegreesCelsius(20)).ShouldBe("68 °F");
        QuantityFormat.Metric.Temperature(Temperature.FromDegreesFahrenheit(-40)).ShouldBe("-40 °C");
        QuantityFormat.Us.Liquid(Volume.FromMilliliters(400)).ShouldBe("13.5 fl oz");
        QuantityFormat.Metric.Liquid(Volume.FromUsOunces(12)).ShouldBe("355 mL");
        QuantityFormat.Us.Film(Length.FromMicrometers(25.4)).ShouldBe("1 mil");
        QuantityFormat.Us.Room(Volume.FromCubicFeet(3960)).ShouldBe("3,960 ft³");
        QuantityFormat.Us.TemperatureDelta(TemperatureDelta.FromKelvins(3)).ShouldBe("5.4 °F");
        QuantityFormat.Ratio(Ratio.FromPercent(10)).ShouldBe("10 %");
    }

    [Theory]
    [InlineData(11, "11 in", "280 mm")]
    [InlineData(4, "4 in", "100 mm")]
    [InlineData(2, "2 in", "50 mm")]
    [InlineData(11.7, "11.5 in", "295 mm")]
    [InlineData(0.31, "0.31 in", "7.87 mm")]
    public void What_a_hand_keeps_is_no_finer_than_a_hand(double inches, string us, string metric)
    {
        QuantityFormat.Us.ByHand(Length.FromInches(inches)).ShouldBe(us);
        QuantityFormat.Metric.ByHand(Length.FromInches(inches)).ShouldBe(metric);
    }

    [Fact]
    public void What_is_written_can_be_read_again()
    {
        var areas = Gen.Double[1e-3, 1e5];

        areas.Sample(v =>
        {
            var area = Area.FromSquareFeet(v);
            foreach (var format in new[] { QuantityFormat.Us, QuantityFormat.Metric })
            {
                var again = QuantityText.Area(format.Area(area));
                again.Ok.ShouldBeTrue(format.Area(area));
                again.Value.SquareFeet.ShouldBe(v, v * 0.01);
            }
        });
        Gen.Int[0, 20_000].Sample(m =>
            QuantityText.Duration(QuantityFormat.Duration(Duration.FromMinutes(m))).Value.ShouldBe(Duration.FromMinutes(m)));
    }

    [Fact]
    public void No_culture_changes_what_is_written_or_read()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("tr-TR") { NumberFormat = { NumberDecimalSeparator = ",", NumberGroupSeparator = "." } };

            QuantityFormat.Us.Area(Area.FromSquareFeet(8.5)).ShouldBe("8.5 ft²");
            QuantityText.Length("6.5 INCHES").Value.Inches.ShouldBe(6.5);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
