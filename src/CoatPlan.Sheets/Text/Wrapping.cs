using System.Globalization;
using CoatPlan.Sheets.Content;

namespace CoatPlan.Sheets.Text;

/// <summary>Breaks text into lines at spaces; a word longer than a line is broken where the line ends.</summary>
public static class Wrapping
{
    private static readonly ImmutableHashSet<string> Units = ImmutableHashSet.Create(
        StringComparer.Ordinal,
        "%", "°F", "°C", "min", "h", "d", "in", "ft", "m", "mm", "ft²", "m²", "ft³", "m³", "ft³/min", "m³/min", "fl", "oz", "ml", "mL", "ppm");

    /// <summary>The lines of a text, at least one. A figure and its unit stay on one line, and no control character goes through.</summary>
    /// <param name="text">The text; runs of white space count as one space.</param>
    /// <param name="width">Characters in a line as a reader counts them, at least 1.</param>
    public static IEnumerable<string> Lines(string text, int width)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 1);
        return Broken(PlainText.Of(text), width);
    }

    /// <summary>The lines of a text that stands beside a lead: the lead before the first line, spaces as wide before the others.</summary>
    /// <param name="lead">What stands before the first line, indent included.</param>
    /// <param name="text">The text.</param>
    /// <param name="width">Characters in a line, lead included; more than the lead has.</param>
    public static IEnumerable<string> Hanging(string lead, string text, int width)
    {
        ArgumentNullException.ThrowIfNull(lead);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, Length(lead) + 1);
        var indent = new string(' ', Length(lead));
        return Lines(text, width - indent.Length).Select((line, index) => (index == 0 ? lead : indent) + line);
    }

    /// <summary>Characters as a reader counts them: a letter with its accent is one.</summary>
    /// <param name="text">The text.</param>
    public static int Length(string text) => new StringInfo(text).LengthInTextElements;

    private static IEnumerable<string> Broken(string text, int width)
    {
        var line = "";
        foreach (var word in Words(text).SelectMany(word => Pieces(word, width)))
        {
            if (line.Length > 0 && Length(line) + 1 + Length(word) > width)
            {
                yield return line;
                line = "";
            }

            line = line.Length == 0 ? word : $"{line} {word}";
        }

        yield return line;
    }

    // "42" at the end of a line and "%" at the start of the next read badly at the bench.
    private static List<string> Words(string text)
    {
        var words = new List<string>();
        foreach (var word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            if (words.Count > 0 && char.IsAsciiDigit(words[^1][^1]) && Units.Contains(word.TrimEnd('.', ',', ';', ':', ')')))
                words[^1] += " " + word;
            else
                words.Add(word);
        }

        return words;
    }

    // A name in a job file sends a terminal no commands.
    private static IEnumerable<string> Pieces(string word, int width)
    {
        var letters = new StringInfo(word);
        for (var at = 0; at < letters.LengthInTextElements; at += width)
            yield return letters.SubstringByTextElements(at, Math.Min(width, letters.LengthInTextElements - at));
    }
}
