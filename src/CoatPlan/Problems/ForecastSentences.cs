using System.Globalization;

namespace CoatPlan.Problems;

/// <summary>Every sentence that says what is wrong in a forecast file.</summary>
internal static class ForecastSentences
{
    public static Problem NoRows() => New("empty-file", "the forecast has no row with weather", "one row or more under the header");

    public static Problem TooManyRows(int most) =>
        New("too-many-values", "the forecast has too many rows", $"at most {most.ToString("N0", CultureInfo.InvariantCulture)}");

    public static Problem LineTooLong(int most) =>
        New("too-many-values", "the line is too long", $"at most {most.ToString("N0", CultureInfo.InvariantCulture)} characters");

    public static Problem MissingColumn(string column, string example, string? mend) => New(
        "missing-column", $"no column of the header is the {column}", $"a column such as `{example}`", "", mend is null ? null : $"`{mend}`");

    public static Problem RepeatedColumn(string column, string tried) =>
        New("repeated-column", $"the column `{tried}` gives the {column} a second time", "it once", tried);

    public static Problem NoUnit(string tried, string example) =>
        New("no-unit", $"the column `{tried}` does not say its unit", $"a header such as `{example}`", tried);

    public static Problem FewFields(int found, int expected) => New(
        "missing-field", $"the row ends after {Number(found)} fields", $"{Number(expected)} fields");

    public static Problem NotANumber(string column, string tried) =>
        New("not-a-number", tried.Length == 0 ? $"the {column} is empty" : $"the {column} is `{tried}`", "a number", tried);

    public static Problem OutOfRange(string column, string tried, Bounds bounds) =>
        New("out-of-range", $"the {column} is `{tried}`", bounds.ToString(), tried);

    public static Problem NotATime(string tried) =>
        New("not-a-time", $"the time is `{tried}`", "a local date and time such as `2027-05-14 16:00`", tried);

    public static Problem NotLater(string tried) => New("order", $"the time `{tried}` is not later than that of the row above", "rows in the order of time", tried);

    public static Problem NoHumidity() => New("missing-field", "the row has neither a dew point nor a humidity", "one of them");

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static Problem New(string code, string message, string expected, string tried = "", string? mend = null) =>
        new() { Code = code, Message = message, Expected = expected, Tried = tried, Mend = mend };
}
