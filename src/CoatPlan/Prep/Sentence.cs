using System.Text;

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
        var text = new StringBuilder(pattern.Length * 2);
        for (var at = 0; at < pattern.Length;)
        {
            var open = pattern.IndexOf('{', at);
            var close = open < 0 ? -1 : pattern.IndexOf('}', open);
            if (close < 0)
            {
                text.Append(pattern, at, pattern.Length - at);
                break;
            }

            var name = pattern[(open + 1)..close];
            text.Append(pattern, at, open - at);
            text.Append(valueOf(name) ?? throw new ArgumentException($"nothing is called '{name}' in '{pattern}'", nameof(pattern)));
            at = close + 1;
        }

        if (text.Length > 0 && !GivenNames.Any(name => pattern.StartsWith($"{{{name}}}", StringComparison.Ordinal)))
            text[0] = char.ToUpperInvariant(text[0]);
        return text.ToString();
    }

    /// <summary>"a", "a and b", "a, b and c".</summary>
    public static string List(IEnumerable<string> items)
    {
        var all = items.Distinct(StringComparer.Ordinal).ToArray();
        return all.Length switch
        {
            0 => "",
            1 => all[0],
            _ => $"{string.Join(", ", all[..^1])} and {all[^1]}",
        };
    }

    /// <summary>A sentence followed by where it comes from, in brackets.</summary>
    public static string WithSource(string sentence, string source, string status) =>
        source.Length == 0 || source == status ? $"{sentence} ({status})" : $"{sentence} ({source}; {status})";
}
