using System.Globalization;
using System.Runtime.CompilerServices;

namespace CoatPlan.Prep;

/// <summary>Sentences of the rule files with what was found put in.</summary>
internal static class Sentence
{
    // What a person or a label calls a thing keeps its own spelling.
    private static readonly ImmutableArray<string> GivenNames = ["surface", "surfaces", "product", "who", "first", "over", "below", "above"];

    /// <summary>Puts values where their names stand in braces; a sentence that does not begin with a given name begins with a capital.</summary>
    /// <exception cref="ArgumentException">A name in braces that has no value.</exception>
    public static string Fill(string pattern, Func<string, string?> valueOf)
    {
        var text = new DefaultInterpolatedStringHandler(pattern.Length, 1, CultureInfo.InvariantCulture);
        Append(ref text, pattern, valueOf);
        return text.ToStringAndClear();
    }

    /// <summary>The same followed by where the sentence comes from, in brackets.</summary>
    /// <exception cref="ArgumentException">A name in braces that has no value.</exception>
    public static string Fill(string pattern, string source, string status, Func<string, string?> valueOf)
    {
        var text = new DefaultInterpolatedStringHandler(pattern.Length + source.Length + status.Length, 1, CultureInfo.InvariantCulture);
        Append(ref text, pattern, valueOf);
        text.AppendLiteral(" (");
        if (source.Length > 0 && source != status)
        {
            text.AppendLiteral(source);
            text.AppendLiteral("; ");
        }

        text.AppendLiteral(status);
        text.AppendLiteral(")");
        return text.ToStringAndClear();
    }

    /// <summary>"a", "a and b", "a, b and c".</summary>
    public static string List(IEnumerable<string> items)
    {
        var all = new GatheredWords();
        foreach (var item in items)
            all.Add(item);
        if (all.Count <= 1)
            return all.Count == 0 ? "" : all[0];

        var text = new DefaultInterpolatedStringHandler(0, all.Count, CultureInfo.InvariantCulture);
        for (var i = 0; i < all.Count; i++)
        {
            text.AppendLiteral(i == 0 ? "" : i < all.Count - 1 ? ", " : " and ");
            text.AppendLiteral(all[i]);
        }

        return text.ToStringAndClear();
    }

    private static void Append(ref DefaultInterpolatedStringHandler text, string pattern, Func<string, string?> valueOf)
    {
        var begins = !BeginsWithGivenName(pattern);
        for (var at = 0; at < pattern.Length;)
        {
            var open = pattern.IndexOf('{', at);
            var close = open < 0 ? -1 : pattern.IndexOf('}', open);
            if (close < 0)
            {
                Append(ref text, pattern.AsSpan(at), ref begins);
                break;
            }

            var name = pattern[(open + 1)..close];
            Append(ref text, pattern.AsSpan(at, open - at), ref begins);
            Append(ref text, valueOf(name) ?? throw new ArgumentException($"nothing is called '{name}' in '{pattern}'", nameof(pattern)), ref begins);
            at = close + 1;
        }
    }

    private static void Append(ref DefaultInterpolatedStringHandler text, ReadOnlySpan<char> part, ref bool begins)
    {
        if (begins && part.Length > 0)
        {
            text.AppendFormatted([char.ToUpperInvariant(part[0])]);
            part = part[1..];
            begins = false;
        }

        text.AppendFormatted(part);
    }

    private static bool BeginsWithGivenName(string pattern)
    {
        if (!pattern.StartsWith('{') || pattern.IndexOf('}', StringComparison.Ordinal) is not (> 0 and var close))
            return false;

        foreach (var name in GivenNames)
        {
            if (pattern.AsSpan(1, close - 1).SequenceEqual(name))
                return true;
        }

        return false;
    }
}
