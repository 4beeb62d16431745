using System.Globalization;
using System.Text;

namespace CoatPlan.Sheets.Content;

/// <summary>Text that a person wrote, made fit to be shown: nothing in it can steer a terminal, a printer or the direction of a line.</summary>
public static class PlainText
{
    // The typeface of the sheets has no replacement character.
    private const char Shown = '?';

    /// <summary>The text with line ends and tabs as spaces and every other control or direction character as a question mark.</summary>
    /// <param name="text">The text.</param>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Value is '\t' or '\n' or '\r' or 0x2028 or 0x2029)
                plain.Append(' ');
            else if (Rune.GetUnicodeCategory(rune) == UnicodeCategory.Control || IsDirection(rune.Value))
                plain.Append(Shown);
            else
                plain.Append(rune.ToString());
        }

        return plain.ToString();
    }

    // The embeddings, overrides and isolates of Unicode's bidirectional algorithm. Source: UAX #9, table 1.
    private static bool IsDirection(int value) => value is >= 0x202A and <= 0x202E or >= 0x2066 and <= 0x2069;
}
