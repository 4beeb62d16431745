using System.Globalization;
using System.Text;
using CoatPlan.Jobs.Yaml;

namespace CoatPlan.Jobs.Editing;

/// <summary>Writes values as YAML, or as JSON where the text is JSON.</summary>
internal sealed class ValueWriter(bool isJson)
{
    private const string Indicators = "?:,[]{}#&*!|>'\"%@`";

    /// <summary>A value in one line; lists and maps in brackets and braces.</summary>
    /// <param name="value">The value.</param>
    /// <param name="isInFlow">Whether it stands in brackets or braces of others.</param>
    public string InLine(JobValue value, bool isInFlow) => value switch
    {
        TextValue text => Text(text.Text, isInFlow),
        ListValue list => "[" + string.Join(", ", list.Items.Select(item => InLine(item, isInFlow: true))) + "]",
        MapValue map => "{" + string.Join(", ", map.Entries.Select(entry => Entry(entry.Key, entry.Value, isInFlow: true))) + "}",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "A text, a list or a map."),
    };

    /// <summary>A key and its value in one line.</summary>
    public string Entry(string key, JobValue value, bool isInFlow) =>
        $"{(isJson ? Quoted(key) : Text(key, isInFlow))}: {InLine(value, isInFlow)}";

    /// <summary>An item of a block list: a map one key a line, anything else in one line.</summary>
    /// <param name="item">The item.</param>
    /// <param name="indent">What stands before the dash.</param>
    /// <param name="newLine">The line end.</param>
    public string BlockItem(JobValue item, string indent, string newLine)
    {
        if (item is not MapValue { Entries.IsEmpty: false } map) return $"{indent}- {InLine(item, isInFlow: false)}";
        var lines = map.Entries.Select((entry, i) => indent + (i == 0 ? "- " : "  ") + Entry(entry.Key, entry.Value, isInFlow: false));
        return string.Join(newLine, lines);
    }

    /// <summary>A text in double quotes, which JSON reads too.</summary>
    public static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (char c in text)
        {
            quoted.Append(c switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                '\n' => "\\n",
                '\r' => "\\r",
                '\t' => "\\t",
                _ => char.IsControl(c) || char.IsSurrogate(c) || c is '\u2028' or '\u2029' or '\uFEFF' or '\uFFFE' or '\uFFFF'
                    ? "\\u" + ((int)c).ToString("X4", CultureInfo.InvariantCulture)
                    : c.ToString(),
            });
        }

        return MendSurrogates(quoted.Append('"').ToString(), text);
    }

    private string Text(string text, bool isInFlow)
    {
        if (isJson) return IsJsonPlain(text) ? text : Quoted(text);
        return IsPlain(text, isInFlow) ? text : Quoted(text);
    }

    // Pairs of surrogates stand as they are; a lone one cannot be written at all, and the edit is refused when it is read again.
    private static string MendSurrogates(string quoted, string text)
    {
        for (int i = 0; i + 1 < text.Length; i++)
        {
            if (!char.IsSurrogatePair(text[i], text[i + 1])) continue;
            string escaped = FormattableString.Invariant($"\\u{(int)text[i]:X4}\\u{(int)text[i + 1]:X4}");
            quoted = quoted.Replace(escaped, text.Substring(i, 2), StringComparison.Ordinal);
        }

        return quoted;
    }

    private static bool IsJsonPlain(string text)
    {
        if (text is "true" or "false") return true;
        string digits = text.StartsWith('-') ? text[1..] : text;
        string[] parts = digits.Split('.');
        bool number = parts.Length <= 2 && parts.All(part => part.Length is > 0 and < 16 && part.All(char.IsAsciiDigit));
        return number && (parts[0].Length == 1 || parts[0][0] != '0');
    }

    private static bool IsPlain(string text, bool isInFlow)
    {
        if (text.Length == 0 || char.IsWhiteSpace(text[0]) || char.IsWhiteSpace(text[^1])) return false;
        if (Indicators.Contains(text[0], StringComparison.Ordinal)) return false;
        bool looksLikeMarker = text[0] == '-' && (text.Length == 1 || !char.IsAsciiLetterOrDigit(text[1]));
        if (looksLikeMarker || text.StartsWith("...", StringComparison.Ordinal)) return false;
        if (new TextNode { Text = text, IsPlain = true, Mark = default, Start = 0, End = 0, Size = 1, Height = 1 }.IsNull) return false;
        if (text.Contains(": ", StringComparison.Ordinal) || text.Contains(" #", StringComparison.Ordinal) || text[^1] == ':') return false;
        if (isInFlow && text.AsSpan().ContainsAny(",[]{}")) return false;
        return text.All(c => c == ' ' || (!char.IsControl(c) && !char.IsWhiteSpace(c) && !char.IsSurrogate(c) && c is not ('\uFEFF' or '\uFFFE' or '\uFFFF')));
    }
}
