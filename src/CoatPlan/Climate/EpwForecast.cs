using System.Globalization;
using CoatPlan.Problems;

namespace CoatPlan.Climate;

/// <summary>Reads a typical year from an EPW file: eight lines of header, then one row an hour, each for the hour that ends then.</summary>
/// <remarks>Source: data dictionary of the EnergyPlus weather file, auxiliary programs document (from memory).</remarks>
internal static class EpwForecast
{
    private const int Month = 1;
    private const int Day = 2;
    private const int Hour = 3;
    private const int Minute = 4;
    private const int DryBulb = 6;
    private const int DewPoint = 7;
    private const int RelativeHumidity = 8;
    private const int WindSpeed = 21;
    private const int RainDepth = 33;

    /// <summary>A leap year, so that every month and day of a file exists.</summary>
    private const int AnyYear = 2000;

    /// <summary>Whether a text is such a file.</summary>
    public static bool IsIt(string text) => text.TrimStart('\uFEFF').StartsWith("LOCATION,", StringComparison.OrdinalIgnoreCase);

    /// <summary>Reads the text.</summary>
    public static ForecastReading Read(string text, string? fileName)
    {
        var problems = new ProblemList(fileName);
        if (ForecastTable.Unreadable(text) is var (mark, unreadable))
        {
            problems.Add(mark, unreadable);
            return new ForecastReading(null, problems.InOrder());
        }

        var rows = ImmutableArray.CreateBuilder<ForecastRow>();
        foreach (var line in ForecastTable.Lines(text, ',').Where(line => line.Fields[0].All(char.IsAsciiDigit)))
        {
            if (rows.Count == ForecastTable.MostRows)
            {
                problems.Add(line.At(0), ForecastSentences.TooManyRows(ForecastTable.MostRows));
                break;
            }

            if (Row(line, problems) is { } row)
            {
                rows.Add(row);
            }
        }

        if (problems.Count == 0 && rows.Count == 0)
        {
            problems.Add(default, ForecastSentences.NoRows());
        }

        return problems.Count == 0
            ? new ForecastReading(new HourlyForecast([.. rows.OrderBy(row => row.Time)], Repeats: true), [])
            : new ForecastReading(null, problems.InOrder());
    }

    private static ForecastRow? Row(ForecastLine line, ProblemList problems)
    {
        if (line.Fields.Length <= WindSpeed)
        {
            problems.Add(line.At(line.Fields.Length - 1), ForecastSentences.FewFields(line.Fields.Length, WindSpeed + 1));
            return null;
        }

        var time = Time(line, problems);
        var air = Figure(line, DryBulb, "air temperature", problems);
        var humidity = Figure(line, RelativeHumidity, "humidity", problems);
        var dew = Figure(line, DewPoint, "dew point", problems);
        var wind = Figure(line, WindSpeed, "wind", problems);
        var rain = line.Fields.Length > RainDepth && line.Fields[RainDepth].Length > 0 ? Figure(line, RainDepth, "rain", problems) : 0;
        if (time is null || air is null || humidity is null || dew is null || wind is null || rain is null)
        {
            return null;
        }

        if (!ForecastBounds.Air.Hold(air.Value))
        {
            problems.Add(line.At(DryBulb), ForecastSentences.OutOfRange("air temperature", line.Fields[DryBulb], ForecastBounds.Air));
            return null;
        }

        // Figures out of bounds are the format's codes for "missing".
        double? share = ForecastBounds.Humidity.Hold(humidity.Value) ? humidity.Value / 100 : null;
        double? point = ForecastBounds.Air.Hold(dew.Value) ? dew : null;
        if (share is null && point is null)
        {
            problems.Add(line.At(DewPoint), ForecastSentences.NoHumidity());
            return null;
        }

        return ForecastRow.Of(
            time.Value, air.Value, share, point,
            ForecastBounds.Wind.Hold(wind.Value) ? wind.Value : 0, rain is >= 0 and < 999 ? rain.Value : 0);
    }

    private static LocalDateTime? Time(ForecastLine line, ProblemList problems)
    {
        var (month, day, hour, minute) = (Whole(line, Month), Whole(line, Day), Whole(line, Hour), Whole(line, Minute));
        if (month is >= 1 and <= 12 && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(AnyYear, month.Value)
            && hour is >= 1 and <= 24 && minute is >= 0 and <= 60)
        {
            var part = minute == 0 ? 60 : minute.Value;
            return new LocalDateTime(AnyYear, month.Value, day.Value, 0, 0).PlusMinutes((hour.Value - 1) * 60 + part);
        }

        problems.Add(line.At(Month), ForecastSentences.NotATime(string.Join(',', line.Fields.Take(Minute + 1))));
        return null;
    }

    private static int? Whole(ForecastLine line, int field) =>
        int.TryParse(line.Fields[field], NumberStyles.None, CultureInfo.InvariantCulture, out var whole) ? whole : null;

    private static double? Figure(ForecastLine line, int field, string called, ProblemList problems)
    {
        const NumberStyles style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        if (double.TryParse(line.Fields[field], style, CultureInfo.InvariantCulture, out var figure) && double.IsFinite(figure))
        {
            return figure;
        }

        problems.Add(line.At(field), ForecastSentences.NotANumber(called, line.Fields[field]));
        return null;
    }
}
