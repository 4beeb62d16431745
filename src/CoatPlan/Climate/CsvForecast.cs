using System.Globalization;
using CoatPlan.Problems;
using NodaTime.Text;

namespace CoatPlan.Climate;

/// <summary>Reads a forecast from comma-separated text with a header; semicolons and tabs do as well.</summary>
internal static class CsvForecast
{
    private static readonly ImmutableArray<LocalDateTimePattern> Times =
    [
        .. new[] { "uuuu-MM-dd HH:mm", "uuuu-MM-dd'T'HH:mm", "uuuu-MM-dd HH:mm:ss", "uuuu-MM-dd'T'HH:mm:ss" }
            .Select(LocalDateTimePattern.CreateWithInvariantCulture),
    ];

    /// <summary>Reads the text.</summary>
    public static ForecastReading Read(string text, string? fileName)
    {
        var problems = new ProblemList(fileName);
        if (ForecastTable.Unreadable(text) is var (mark, unreadable))
        {
            problems.Add(mark, unreadable);
            return new ForecastReading(null, problems.InOrder());
        }

        var rows = Rows(text, problems);
        if (problems.Count == 0 && rows.IsEmpty)
        {
            problems.Add(default, ForecastSentences.NoRows());
        }

        return problems.Count == 0
            ? new ForecastReading(new HourlyForecast(rows, Repeats: false), [])
            : new ForecastReading(null, problems.InOrder());
    }

    private static ImmutableArray<ForecastRow> Rows(string text, ProblemList problems)
    {
        var delimiter = Delimiter(text);
        var rows = ImmutableArray.CreateBuilder<ForecastRow>();
        ForecastHeader? header = null;
        foreach (var line in ForecastTable.Lines(text, delimiter))
        {
            if (header is null)
            {
                header = ForecastHeader.Read(line, problems);
                if (problems.Count > 0)
                {
                    break;
                }
            }
            else if (problems.IsFull)
            {
                break;
            }
            else if (rows.Count == ForecastTable.MostRows)
            {
                problems.Add(line.At(0), ForecastSentences.TooManyRows(ForecastTable.MostRows));
                break;
            }
            else if (Row(header, line, delimiter, problems) is { } row)
            {
                if (rows.Count > 0 && row.Time <= rows[^1].Time)
                {
                    problems.Add(line.At(header.Field(ForecastColumn.Time)), ForecastSentences.NotLater(line.Fields[header.Field(ForecastColumn.Time)]));
                }

                rows.Add(row);
            }
        }

        return rows.ToImmutable();
    }

    private static ForecastRow? Row(ForecastHeader header, ForecastLine line, char delimiter, ProblemList problems)
    {
        if (line.Fields.Length < header.Fields)
        {
            problems.Add(line.At(line.Fields.Length - 1), ForecastSentences.FewFields(line.Fields.Length, header.Fields));
            return null;
        }

        var time = Time(header, line, problems);
        var air = Figure(ForecastColumn.Air, ForecastBounds.Air);
        var humidity = header.Has(ForecastColumn.Humidity) ? Figure(ForecastColumn.Humidity, ForecastBounds.Humidity) : null;
        var dew = header.Has(ForecastColumn.DewPoint) ? Figure(ForecastColumn.DewPoint, ForecastBounds.Air) : null;
        var wind = header.Has(ForecastColumn.Wind) ? Figure(ForecastColumn.Wind, ForecastBounds.Wind) : 0;
        var rain = header.Has(ForecastColumn.Rain) ? Figure(ForecastColumn.Rain, ForecastBounds.Rain) : 0;
        if (time is null || air is null || (humidity ?? dew) is null || wind is null || rain is null)
        {
            return null;
        }

        return ForecastRow.Of(time.Value, air.Value, humidity, dew, wind.Value, rain.Value);

        double? Figure(ForecastColumn column, Bounds bounds) => Number(header, line, column, bounds, delimiter, problems);
    }

    private static LocalDateTime? Time(ForecastHeader header, ForecastLine line, ProblemList problems)
    {
        var field = header.Field(ForecastColumn.Time);
        foreach (var pattern in Times)
        {
            if (pattern.Parse(line.Fields[field]).TryGetValue(default, out var time))
            {
                return time;
            }
        }

        problems.Add(line.At(field), ForecastSentences.NotATime(line.Fields[field]));
        return null;
    }

    private static double? Number(ForecastHeader header, ForecastLine line, ForecastColumn column, Bounds bounds, char delimiter, ProblemList problems)
    {
        var field = header.Field(column);
        var tried = line.Fields[field];
        var text = delimiter == ',' || tried.Contains('.', StringComparison.Ordinal) ? tried : tried.Replace(',', '.');
        const NumberStyles style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        if (!double.TryParse(text, style, CultureInfo.InvariantCulture, out var figure) || !double.IsFinite(figure))
        {
            problems.Add(line.At(field), ForecastSentences.NotANumber(ForecastHeader.Called(column), tried));
            return null;
        }

        var value = header.Value(column, figure);
        if (!bounds.Hold(column == ForecastColumn.Humidity ? value * 100 : value))
        {
            problems.Add(line.At(field), ForecastSentences.OutOfRange(ForecastHeader.Called(column), tried, bounds));
            return null;
        }

        return value;
    }

    private static char Delimiter(string text)
    {
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            if (!line.IsWhiteSpace() && line[0] != '#')
            {
                var header = line.ToString();
                return ",;\t".MaxBy(sign => header.Count(found => found == sign));
            }
        }

        return ',';
    }
}
