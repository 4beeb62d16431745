using System.Text;

namespace CoatPlan.Sheets.Calendar;

/// <summary>Lines of a calendar, none longer than 75 octets. Source: RFC 5545, section 3.1.</summary>
internal static class CalendarLines
{
    private const int LongestLine = 75;

    private const string LineEnd = "\r\n";

    /// <summary>The text with its lines unfolded and folded anew by octets, so that a letter of several octets stays whole.</summary>
    /// <param name="text">A calendar.</param>
    public static string Fold(string text)
    {
        var folded = new StringBuilder(text.Length);
        foreach (var line in text.ReplaceLineEndings("\n").Replace("\n ", "", StringComparison.Ordinal).Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var octets = 0;
            foreach (var rune in line.EnumerateRunes())
            {
                if (octets + rune.Utf8SequenceLength > LongestLine)
                {
                    folded.Append(LineEnd).Append(' ');
                    octets = 1;
                }

                folded.Append(rune.ToString());
                octets += rune.Utf8SequenceLength;
            }

            folded.Append(LineEnd);
        }

        return folded.ToString();
    }
}
