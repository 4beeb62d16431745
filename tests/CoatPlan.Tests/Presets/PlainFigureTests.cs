using System.Globalization;
using CoatPlan.Presets;
using CoatPlan.Quantities;
using CsCheck;

namespace CoatPlan.Tests.Presets;

/// <summary>The quick way of reading a figure gives the very value that the reader of people's spellings gives.</summary>
public sealed class PlainFigureTests
{
    private static readonly Gen<string> Figures = Gen.Double[0.01, 999]
        .Select(value => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture))
        .Where(text => text != "0");

    [Theory]
    [InlineData("mil")]
    [InlineData("µm")]
    [InlineData("mm")]
    [InlineData("in")]
    [InlineData("ft")]
    [InlineData("cm")]
    [InlineData("yd")]
    public void A_length(string unit) => Same(unit, row => row.Length("v").Meters, text => QuantityText.Length(text).Value.Meters);

    [Theory]
    [InlineData("ft2")]
    [InlineData("m2")]
    [InlineData("sq ft")]
    public void An_area(string unit) => Same(unit, row => row.Area("v").SquareMeters, text => QuantityText.Area(text).Value.SquareMeters);

    [Theory]
    [InlineData("min")]
    [InlineData("h")]
    [InlineData("s")]
    public void A_time(string unit) => Same(unit, row => row.Time("v").TotalSeconds, text => QuantityText.Duration(text).Value.TotalSeconds);

    [Theory]
    [InlineData("°F")]
    [InlineData("°C")]
    public void A_temperature(string unit) => Same(unit, row => row.Temperature("v").Kelvins, text => QuantityText.Temperature(text).Value.Kelvins);

    [Theory]
    [InlineData("kg/L")]
    [InlineData("kg/m3")]
    [InlineData("g/mL")]
    public void A_density(string unit) =>
        Gen.Int[1, 25].Sample(value => Equal($"{value} {unit}", row => row.Density("v").KilogramsPerCubicMeter, text => QuantityText.Density(text).Value.KilogramsPerCubicMeter), iter: 25);

    [Fact]
    public void A_share() =>
        Gen.Int[0, 100].Sample(
            value => Equal($"{value} %", row => row.Percent("v", PresetBounds.Percent).Percent, text => QuantityText.Ratio(text).Value.Percent), iter: 50);

    [Theory]
    [InlineData("10 min-1 h", 10, 60.0)]
    [InlineData("after 24 h", 1440, null)]
    [InlineData("30 min - 2 h", 30, 120.0)]
    [InlineData("1-3 d", 1440, 4320.0)]
    public void A_window(string text, double from, double? to)
    {
        var window = WindowText.Read(text).ShouldNotBeNull();

        window.Least!.Value.TotalMinutes.ShouldBe(from);
        window.Most?.TotalMinutes.ShouldBe(to!.Value);
        window.Most.HasValue.ShouldBe(to.HasValue);
    }

    [Theory]
    [InlineData("2 h-1 h")]
    [InlineData("soon")]
    [InlineData("after")]
    [InlineData("10 min")]
    [InlineData("")]
    public void No_window(string text) => WindowText.Read(text).ShouldBeNull();

    [Theory]
    [InlineData("1e3 mm", 1)]
    [InlineData("1/2 in", 0.0127)]
    [InlineData("1,000 mm", 1)]
    [InlineData("3 ft 6 in", 1.0668)]
    public void Everyday_spellings_work_in_a_users_file_too(string text, double metres) => RowOf(text).Length("v").Meters.ShouldBe(metres, 1e-12);

    private static void Same(string unit, Func<PresetRow, double> quick, Func<string, double> slow) =>
        Figures.Sample(figure => Equal($"{figure} {unit}", quick, slow), iter: 50);

    private static void Equal(string text, Func<PresetRow, double> quick, Func<string, double> slow) => quick(RowOf(text)).ShouldBe(slow(text), 1e-9, text);

    private static PresetRow RowOf(string text)
    {
        var root = PlainYaml.Read($"v: '{text}'\n").ShouldNotBeNull();
        return new("a row", [new(root.Entries[0].Key, root, PresetFile.Read(new("x.yaml", "figures: {}\n"), isOverride: true))]);
    }
}
