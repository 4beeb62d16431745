using CoatPlan.Problems;
using CoatPlan.Quantities;

namespace CoatPlan.Climate;

/// <summary>Which field of a line is what, and in which unit: <c>air °F</c>, <c>temperature (°C)</c>, <c>temp_f</c>, <c>RH [%]</c>.</summary>
internal sealed class ForecastHeader
{
    private static readonly ImmutableArray<(ForecastColumn Column, string Names, string Called, string Example)> Known =
    [
        (ForecastColumn.Time, "time|date time|date and time|datetime|timestamp|local time|date", "time", "time"),
        (ForecastColumn.Air, "air|air temperature|air temp|temperature|temp|dry bulb|dry bulb temperature", "air temperature", "air °F"),
        (ForecastColumn.Humidity, "humidity|relative humidity|rel humidity|rh", "humidity", "humidity %"),
        (ForecastColumn.DewPoint, "dew point|dewpoint|dew", "dew point", "dew point °F"),
        (ForecastColumn.Wind, "wind|wind speed|windspeed", "wind", "wind mph"),
        (ForecastColumn.Rain, "rain|rainfall|precipitation|precip", "rain", "rain mm"),
    ];

    private readonly Dictionary<ForecastColumn, (int Field, double Zero, double One)> places = [];

    private ForecastHeader()
    {
    }

    /// <summary>Fields that a row must have.</summary>
    public int Fields => places.Count == 0 ? 0 : places.Values.Max(place => place.Field) + 1;

    /// <summary>What a column is called in a message.</summary>
    public static string Called(ForecastColumn column) => Known.First(known => known.Column == column).Called;

    /// <summary>The columns of a header.</summary>
    /// <param name="line">The header.</param>
    /// <param name="problems">Receives what is wrong.</param>
    public static ForecastHeader Read(ForecastLine line, ProblemList problems)
    {
        var header = new ForecastHeader();
        for (var field = 0; field < line.Fields.Length; field++)
        {
            header.Add(line, field, problems);
        }

        header.Require(ForecastColumn.Time, line, problems);
        header.Require(ForecastColumn.Air, line, problems);
        if (!header.Has(ForecastColumn.DewPoint))
        {
            header.Require(ForecastColumn.Humidity, line, problems);
        }

        return header;
    }

    /// <summary>Whether there is such a column.</summary>
    public bool Has(ForecastColumn column) => places.ContainsKey(column);

    /// <summary>Which field of a line holds a column.</summary>
    public int Field(ForecastColumn column) => places[column].Field;

    /// <summary>A figure of a column in the unit of all sums: °C, shares, m/s, mm.</summary>
    public double Value(ForecastColumn column, double figure) => places[column].Zero + (places[column].One - places[column].Zero) * figure;

    private void Add(ForecastLine line, int field, ProblemList problems)
    {
        var words = Plain(line.Fields[field]);
        foreach (var (column, names, called, example) in Known)
        {
            if (UnitAfter(words, names) is not { } unit)
            {
                continue;
            }

            if (unit.Length == 0 && column != ForecastColumn.Time)
            {
                problems.Add(line.At(field), ForecastSentences.NoUnit(line.Fields[field], example));
                places.TryAdd(column, (field, 0, 1));
            }
            else if (Scale(column, unit) is { } scale && !places.TryAdd(column, (field, scale.Zero, scale.One)))
            {
                problems.Add(line.At(field), ForecastSentences.RepeatedColumn(called, line.Fields[field]));
            }
        }
    }

    private void Require(ForecastColumn column, ForecastLine line, ProblemList problems)
    {
        if (Has(column))
        {
            return;
        }

        var (_, names, called, example) = Known.First(known => known.Column == column);
        var near = line.Fields.FirstOrDefault(field => Nearest.To(Plain(field).Split(' ')[0], names.Split('|')) is not null);
        problems.Add(line.At(0), ForecastSentences.MissingColumn(called, example, near is null ? null : example));
    }

    /// <summary>What follows the longest name that the words begin with; null: they begin with none.</summary>
    private static string? UnitAfter(string words, string names)
    {
        var name = names.Split('|').Where(name => words == name || words.StartsWith(name + ' ', StringComparison.Ordinal)).MaxBy(name => name.Length);
        return name is null ? null : words[name.Length..].Trim();
    }

    private static (double Zero, double One)? Scale(ForecastColumn column, string unit)
    {
        var (zero, one) = (Read(column, "0 " + unit), Read(column, "1 " + unit));
        return column == ForecastColumn.Time ? (unit.Length == 0 ? (0, 1) : null)
            : zero is null || one is null ? null
            : (zero.Value, one.Value);
    }

    private static double? Read(ForecastColumn column, string text) => column switch
    {
        ForecastColumn.Air or ForecastColumn.DewPoint => QuantityText.Temperature(text) is { Ok: true } read ? read.Value.DegreesCelsius : null,
        ForecastColumn.Humidity => QuantityText.Ratio(text) is { Ok: true } read ? read.Value.DecimalFractions : null,
        ForecastColumn.Wind => QuantityText.Speed(text) is { Ok: true } read ? read.Value.MetersPerSecond : null,
        ForecastColumn.Rain => QuantityText.Length(text) is { Ok: true } read ? read.Value.Millimeters : null,
        _ => null,
    };

    private static string Plain(string header) => string.Join(
        ' ', header.Trim('\uFEFF').ToLowerInvariant().Split([' ', '_', '(', ')', '[', ']', ',', ':', '-'], StringSplitOptions.RemoveEmptyEntries));
}
