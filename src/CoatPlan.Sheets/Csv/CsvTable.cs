using System.Globalization;
using CoatPlan.Sheets.Content;
using CoatPlan.Supplies;
using CsvHelper;

namespace CoatPlan.Sheets.Csv;

/// <summary>A table as comma-separated values that a spreadsheet shows and never runs. Source: RFC 4180.</summary>
internal static class CsvTable
{
    // The last four are the wide forms of the first, which some spreadsheets take for them.
    private const string Formula = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

    private const string Control = "\t\r\n";

    /// <summary>Writes the head and the rows.</summary>
    /// <param name="head">The names of the columns.</param>
    /// <param name="rows">The rows, a cell a column each, made by <see cref="Text"/>, <see cref="Number(double?)"/> or <see cref="Time"/>.</param>
    public static string Write(ImmutableArray<string> head, IEnumerable<ImmutableArray<string>> rows)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(text, CsvWriterOptions.Default, leaveOpen: true))
        {
            foreach (var row in rows.Prepend(head))
            {
                foreach (var cell in row)
                    csv.WriteField(cell);
                csv.EndRecord();
            }

            csv.Flush();
        }

        return text.ToString();
    }

    /// <summary>Words on one line; those that a spreadsheet would take for a formula stand behind an apostrophe.</summary>
    /// <param name="text">The words; null for an empty cell.</param>
    public static string Text(string? text)
    {
        if (string.IsNullOrEmpty(text))
            return "";

        var first = text.TrimStart();
        var runs = Control.Contains(text[0]) || (first.Length > 0 && Formula.Contains(first[0]));
        return (runs ? "'" : "") + PlainText.Of(text);
    }

    /// <summary>A number with a point, whatever the machine's culture.</summary>
    /// <param name="number">The number; null for an empty cell.</param>
    public static string Number(double? number) => number is { } known ? Math.Round(known, 4, MidpointRounding.AwayFromZero).ToString("0.####", CultureInfo.InvariantCulture) : "";

    /// <summary>An amount of money.</summary>
    /// <param name="amount">The amount; null for an empty cell.</param>
    /// <param name="currency">ISO 4217 code: it says how many digits stand behind the point.</param>
    public static string Amount(decimal? amount, string currency) => amount is { } known ? known.ToString($"F{MinorUnits.Of(currency)}", CultureInfo.InvariantCulture) : "";

    /// <summary>A moment as spreadsheets read it, such as <c>2027-05-15 08:10</c>.</summary>
    /// <param name="time">The moment; null for an empty cell.</param>
    public static string Time(LocalDateTime? time) => time?.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture) ?? "";
}
