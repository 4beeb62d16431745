using System.Text;
using CoatPlan.Problems;
using CsvHelper;

namespace CoatPlan.Climate;

/// <summary>The lines of a comma-separated text, each field with its place.</summary>
internal static class ForecastTable
{
    /// <summary>Longest file that is read, characters.</summary>
    public const int LongestText = 16 * 1024 * 1024;

    /// <summary>Most rows that are read: more than twenty years of hours.</summary>
    public const int MostRows = 200_000;

    /// <summary>Longest line, characters. A row of a forecast has some dozens of them, one of a typical year some hundreds.</summary>
    public const int LongestLine = 10_000;

    /// <summary>What forbids reading the text at all; null: nothing.</summary>
    public static (Mark Mark, Problem Problem)? Unreadable(string text)
    {
        if (text.Length > LongestText)
        {
            return (default, Sentences.TooLarge(LongestText));
        }

        if (LongLine(text) is { } line)
        {
            return (new Mark(line, 1), ForecastSentences.LineTooLong(LongestLine));
        }

        var control = text.AsSpan().IndexOfAnyInRange('\0', '\u0008');
        return control < 0 ? null : (MarkAt(text, control), Sentences.ControlCharacter(text[control]));
    }

    /// <summary>The lines with at least one field that is not blank.</summary>
    /// <param name="text">The text.</param>
    /// <param name="delimiter">What stands between fields.</param>
    public static IEnumerable<ForecastLine> Lines(string text, char delimiter)
    {
        using var reader = CsvReader.FromText(text, new CsvReaderOptions
        {
            Separator = delimiter, HasHeader = false, AllowLineBreaksInQuotes = false, TrackLineNumbers = true, CommentPrefix = '#',
        });
        while (reader.Read())
        {
            var fields = reader.Current.ToArray().Select(field => field.Trim()).ToImmutableArray();
            if (fields.Any(field => field.Length > 0))
            {
                yield return new ForecastLine(fields, Columns(Encoding.UTF8.GetString(reader.RawRecord), delimiter), (int)reader.LineNumber);
            }
        }
    }

    // Its number; asked before a line is cut into fields, of which one of many megabytes would have millions.
    private static int? LongLine(string text)
    {
        var line = 1;
        foreach (var own in text.AsSpan().EnumerateLines())
        {
            if (own.Length > LongestLine)
            {
                return line;
            }

            line++;
        }

        return null;
    }

    private static Mark MarkAt(string text, int index)
    {
        var before = text[..index];
        return new Mark(LineBreaks(before) + 1, index - before.LastIndexOf('\n'));
    }

    private static int LineBreaks(string text) => text.Count(sign => sign == '\n');

    private static ImmutableArray<int> Columns(string raw, char delimiter)
    {
        var columns = ImmutableArray.CreateBuilder<int>();
        columns.Add(1);
        var quoted = false;
        for (var i = 0; i < raw.Length; i++)
        {
            quoted ^= raw[i] == '"';
            if (raw[i] == delimiter && !quoted)
            {
                columns.Add(i + 2);
            }
        }

        return columns.ToImmutable();
    }
}
