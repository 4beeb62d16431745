using System.Globalization;
using System.Text;

namespace CoatPlan.Problems;

/// <summary>Something that is wrong in a text of the user, where it stands, and how to mend it.</summary>
public sealed record Problem
{
    private const int LongestPart = 300;

    /// <summary>What kind of mistake it is, in kebab case, e.g. <c>unknown-key</c>; stable, for scripts and tests.</summary>
    public required string Code { get; init; }

    /// <summary>Name of the file as the user gave it; null: not said.</summary>
    public string? File { get; init; }

    /// <summary>Line, from 1.</summary>
    public int Line { get; init; } = 1;

    /// <summary>Column in UTF-16 units, from 1.</summary>
    public int Column { get; init; } = 1;

    /// <summary>The text that was tried; empty: nothing stands there.</summary>
    public string Tried { get; init; } = "";

    /// <summary>What is wrong.</summary>
    public required string Message { get; init; }

    /// <summary>What was expected; empty: the message says it.</summary>
    public string Expected { get; init; } = "";

    /// <summary>What was likely meant; null: no guess.</summary>
    public string? Mend { get; init; }

    /// <summary>The problem at a place.</summary>
    /// <param name="mark">The place; <c>default</c> is the start of the text.</param>
    public Problem At(Mark mark) => this with { Line = Math.Max(1, mark.Line), Column = Math.Max(1, mark.Column) };

    /// <summary>One line: <c>file:line:column: what is wrong, expected …; did you mean …?</c></summary>
    public override string ToString()
    {
        var line = new StringBuilder();
        if (!string.IsNullOrEmpty(File)) line.Append(OneLine(File)).Append(':');
        line.Append(CultureInfo.InvariantCulture, $"{Line}:{Column}: ").Append(OneLine(Message));
        if (Expected.Length > 0) line.Append(", expected ").Append(OneLine(Expected));
        if (!string.IsNullOrEmpty(Mend)) line.Append("; did you mean ").Append(OneLine(Mend)).Append('?');
        return line.ToString();
    }

    // What a file holds may be anything; a problem stays one line and sends a terminal no control characters.
    private static string OneLine(string text)
    {
        var line = new StringBuilder(Math.Min(text.Length, LongestPart));
        foreach (var rune in text.EnumerateRunes())
        {
            if (line.Length >= LongestPart) return line.Append('…').ToString();
            bool plain = rune.Value is not (0x2028 or 0x2029) && !Rune.IsControl(rune)
                && Rune.GetUnicodeCategory(rune) is not UnicodeCategory.Format;
            if (plain) line.Append(rune.ToString());
            else line.Append(rune.Value is '\n' or '\r' or '\t' ? ' ' : '\uFFFD');
        }

        return line.ToString();
    }
}
