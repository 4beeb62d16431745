using System.Globalization;

namespace CoatPlan.Sheets.Text;

/// <summary>Breaks text into lines at spaces; a word longer than a line is broken where the line ends.</summary>
public static class Wrapping
{
    /// <summary>The lines of a text, at least one.</summary>
    /// <param name="text">The text; runs of white space count as one space.</param>
    /// <param name="width">Characters in a line as a reader counts them, at least 1.</param>
    public static IEnumerable<string> Lines(string text, int width)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 1);
        return Broken(text, width);
    }

    /// <summary>Characters as a reader counts them: a letter with its accent is one.</summary>
    /// <param name="text">The text.</param>
    public static int Length(string text) => new StringInfo(text).LengthInTextElements;

    private static IEnumerable<string> Broken(string text, int width)
    {
        var line = "";
        foreach (var word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, width)))
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

    private static IEnumerable<string> Pieces(string word, int width)
    {
        var letters = new StringInfo(word);
        for (var at = 0; at < letters.LengthInTextElements; at += width)
            yield return letters.SubstringByTextElements(at, Math.Min(width, letters.LengthInTextElements - at));
    }
}
