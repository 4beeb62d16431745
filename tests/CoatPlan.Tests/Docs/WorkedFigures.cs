using System.Globalization;
using System.Text.RegularExpressions;
using CoatPlan.Climate;
using CoatPlan.Presets;
using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Tests.Docs;

/// <summary>Tables of worked figures: each row names a figure, what it follows from, and its value; the library's own functions compute it anew from what the row says.</summary>
public sealed class WorkedFigures
{
    private static readonly Catalogue Known = Trade.Standard.Catalogue;

    public static TheoryData<string, string, string, string> Rows
    {
        get
        {
            var rows = new TheoryData<string, string, string, string>();
            foreach (var page in DocsPage.All)
            {
                foreach (var row in page.Tables.Where(table => table.Head[0] == "figure").SelectMany(table => table.Rows))
                    rows.Add(page.Name, row[0], row[1], row[2]);
            }

            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_figure_is_computed_from_what_its_row_says(string page, string figure, string from, string answer)
    {
        var (number, unit) = Split(answer);
        var decimals = number.Contains('.', StringComparison.Ordinal) ? number.Length - number.IndexOf('.', StringComparison.Ordinal) - 1 : 0;

        Compute(figure, from, unit).ShouldBe(double.Parse(number, CultureInfo.InvariantCulture), 0.5000001 * Math.Pow(10, -decimals), $"{page}: {figure} from {from}");
    }

    [Fact]
    public void There_are_rows_enough() => Rows.Count.ShouldBeGreaterThan(10);

    private static double Compute(string figure, string from, string unit) => figure switch
    {
        "dew point" => In(Humidity.DewPoint(Temperature(from, "air"), Share(from, "humidity")), unit),
        "humidity" => Humidity.Relative(Temperature(from, "air"), Temperature(from, "dew point")).Percent,
        "air of the day" => DayAir(from, unit),
        "time constant of the metal" => MetalLag.Of(
            Known.Material(Word(from, @"^([a-z ]+),")).Density, Known.Material(Word(from, @"^([a-z ]+),")).SpecificHeat, QuantityText.Length(Word(from, @"(\S+ mm)")).Value,
            int.Parse(Word(from, @"(\d) faces?"), CultureInfo.InvariantCulture), from.Contains("outdoors", StringComparison.Ordinal) ? Known.Film.Outdoors : Known.Film.Indoors).TotalMinutes,
        "metal later" => Later(from, unit),
        "rate of drying" => Rate(from),
        "time at that rate" => Math.Ceiling(Minutes(from, "label") / Rate(from)),
        "thick film" => Drying.ThickFilmFactor(double.Parse(Word(from, "film ([0-9.]+) times"), CultureInfo.InvariantCulture), ClimateFigures.Of(Known)),
        _ => throw new InvalidOperationException($"no figure is called '{figure}'"),
    };

    private static double DayAir(string from, string unit)
    {
        var (low, high) = (Temperature(from, "low").Kelvins, Temperature(from, "high").Kelvins);
        var time = NodaTime.Text.LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(Word(from, @"at (\d\d:\d\d)")).Value;
        return In(UnitsNet.Temperature.FromKelvins(high - DailyShape.ShareAt(time.Hour * 60 + time.Minute) * (high - low)), unit);
    }

    // The library's own step, minute by minute, in air that stays as it is.
    private static double Later(string from, string unit)
    {
        var (air, metal) = (Temperature(from, "air").DegreesCelsius, Temperature(from, "metal").DegreesCelsius);
        var curve = new SurfaceCurve(null!, Minutes(from, "lag"));
        for (var minute = 0; minute < Minutes(from, "after"); minute++)
            metal = curve.Step(metal, air, air);
        return In(UnitsNet.Temperature.FromDegreesCelsius(metal), unit);
    }

    private static double Rate(string from)
    {
        var at = Temperature(from, "at");
        var metal = Temperature(from, "metal");
        var isWater = from.Contains("waterborne", StringComparison.Ordinal);
        var isMoisture = from.Contains("moisture", StringComparison.Ordinal);
        var isWash = from.Contains("wash", StringComparison.Ordinal);
        return new RateLaw
        {
            Kind = isWash ? RateKind.Evaporation : isWater ? RateKind.WarmthAndDryness : isMoisture ? RateKind.WarmthAndDamp : RateKind.Warmth,
            Bound = from.Contains("closing", StringComparison.Ordinal) ? RateBound.Ceiling : RateBound.Floor,
            AtCelsius = at.DegreesCelsius,
            AtRelative = 0.5,
            Q10 = 2,
        }.At(metal.DegreesCelsius, from.Contains("air ", StringComparison.Ordinal) ? Temperature(from, "air").DegreesCelsius : metal.DegreesCelsius, from.Contains("humidity", StringComparison.Ordinal) ? Share(from, "humidity").DecimalFractions : 0.5);
    }

    private static double In(Temperature temperature, string unit) => unit == "°F" ? temperature.DegreesFahrenheit : temperature.DegreesCelsius;

    private static Temperature Temperature(string from, string name) => QuantityText.Temperature(Word(from, $@"{name} (−?[\d.]+ °[FC])").Replace('−', '-')).Value;

    private static Ratio Share(string from, string name) => QuantityText.Ratio(Word(from, $@"{name} ([\d.]+ %)")).Value;

    private static double Minutes(string from, string name) => QuantityText.Duration(Word(from, $@"{name} ([\d.]+ (?:min|h))")).Value.TotalMinutes;

    private static string Word(string from, string pattern) =>
        Regex.Match(from, pattern) is { Success: true } match ? match.Groups[1].Value : throw new InvalidOperationException($"'{from}' lacks {pattern}");

    private static (string Number, string Unit) Split(string answer) =>
        Regex.Match(answer.Replace('−', '-'), @"^(-?[\d.]+) ?(.*)$") is { Success: true } match ? (match.Groups[1].Value, match.Groups[2].Value) : throw new InvalidOperationException($"'{answer}' is no figure");
}
