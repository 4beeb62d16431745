using System.Text;

namespace CoatPlan.Tests.Fuzzing;

/// <summary>Breaks texts: by bytes, by characters, by the lines and values that their grammar has, and by splicing two of them.</summary>
internal static class Breaking
{
    /// <summary>Values that are odd wherever they stand.</summary>
    public static readonly string[] Odd =
    [
        "", " ", "\t", "\n", "\r\n", "\r", ":", ": ", "- ", "? ", "[", "]", "{", "}", ",", "\"", "'", "&a ", "*a", "*b", "|", ">", "|+9", "#", " #", "%", "%YAML 1.2", "---", "...", "!", "!!", "!!str ", "!x ", "@", "`", "<<: ",
        "null", "~", "true", "no", "0", "-0", "-1", "1e999", "-1e999", "1e-999", "NaN", "Infinity", "0x10", "1_000", "1,000", "1,5", ".5", "5.", "1/0", "1/2", "99999999999999999999", "9223372036854775808", "2147483648",
        "8 ft2", "1e300 ft2", "0 ft2", "-5 min", "1e18 d", "100 000 h", "12 oz", "70 °F", "-500 °F", "1e9 °C", "140 %", "50-90 °F", "90-50 °F", "after 24 h", "within 0 min", "none", "16:00-21:00", "22:00-02:00", "00:00-24:00", "24:00-24:00",
        "2027-02-30 16:00", "0001-01-01 00:00", "9999-12-31 23:59", "10000-01-01 00:00", "Mon-Sun", "Sun-Mon", "°", "é", "e\u0301", "😀", "\u0000", "\u001b", "\u0085", "\u2028", "\ufeff", "\ufffe", "\ud800", "\udc00", "\u202e", "İ", "ı", "ß", "ﬁ", "٣", "\\ud800", "\"\\ud83d\"", "\"\\x\"", "\"\\U00110000\"", "\"\\0\"",
        "steel", "bare", "black", "etch", "wiring", "aerosol", "steady: {air: 1 °F, humidity: 1 %}", "hours: x.csv", "done: []", "{}", "[]", "[[]]", "{a: {a: {a: {}}}}", "less: [{}]",
    ];

    /// <summary>A text that came of another, still of characters.</summary>
    public static string Text(Random random, string text, string other)
    {
        for (var times = random.Next(1, 5); times > 0; times--)
        {
            text = random.Next(8) switch
            {
                0 => Characters(random, text),
                1 or 2 => Line(random, text),
                3 or 4 or 5 => Value(random, text),
                6 => Put(random, text, Odd[random.Next(Odd.Length)]),
                _ => Splice(random, text, other),
            };
        }

        return text;
    }

    /// <summary>Bytes that came of a text and may be no text at all.</summary>
    public static byte[] Bytes(Random random, string text, string other)
    {
        List<byte> bytes = [.. Encoding.UTF8.GetBytes(random.Next(2) == 0 ? text : Text(random, text, other))];
        for (var times = random.Next(1, 6); times > 0 && bytes.Count > 0; times--)
        {
            var at = random.Next(bytes.Count);
            switch (random.Next(5))
            {
                case 0:
                    bytes[at] ^= (byte)(1 << random.Next(8));
                    break;
                case 1:
                    bytes[at] = (byte)random.Next(256);
                    break;
                case 2:
                    bytes.RemoveRange(at, Math.Min(random.Next(1, 40), bytes.Count - at));
                    break;
                case 3:
                    bytes.InsertRange(at, bytes.GetRange(at, Math.Min(random.Next(1, 200), bytes.Count - at)));
                    break;
                default:
                    bytes.RemoveRange(at, random.Next(20) == 0 ? bytes.Count - at : 0);
                    break;
            }
        }

        return [.. bytes];
    }

    private static string Characters(Random random, string text)
    {
        if (text.Length == 0)
            return "x";

        var at = random.Next(text.Length);
        return random.Next(3) switch
        {
            0 => text.Remove(at, Math.Min(random.Next(1, 12), text.Length - at)),
            1 => text.Insert(at, ((char)random.Next(random.Next(2) == 0 ? 128 : 65536)).ToString()),
            _ => text[..at] + text[random.Next(text.Length)] + text[(at + 1)..],
        };
    }

    // Takes a line out, says it twice, moves it, or changes its indent.
    private static string Line(Random random, string text)
    {
        List<string> lines = [.. text.Split('\n')];
        var (at, to) = (random.Next(lines.Count), random.Next(lines.Count));
        var line = lines[at];
        switch (random.Next(5))
        {
            case 0:
                lines.RemoveAt(at);
                break;
            case 1:
                lines.Insert(to, line);
                break;
            case 2:
                (lines[at], lines[to]) = (lines[to], line);
                break;
            case 3:
                lines[at] = new string(' ', random.Next(6)) + line;
                break;
            default:
                lines[at] = line.TrimStart();
                break;
        }

        return string.Join('\n', lines);
    }

    // Puts another value, an odd one or one from elsewhere in the text, behind a colon or a comma.
    private static string Value(Random random, string text)
    {
        var marks = Enumerable.Range(0, text.Length).Where(at => text[at] is ':' or ',' or '[' or '-').ToList();
        if (marks.Count == 0)
            return Put(random, text, Odd[random.Next(Odd.Length)]);

        var start = marks[random.Next(marks.Count)] + 1;
        var end = End(text, start);
        var from = marks[random.Next(marks.Count)] + 1;
        var value = random.Next(3) == 0 ? text[from..End(text, from)] : " " + Odd[random.Next(Odd.Length)];
        return text[..start] + value + text[end..];
    }

    private static int End(string text, int start)
    {
        var end = text.AsSpan(start).IndexOfAny(",]}\n");
        return end < 0 ? text.Length : start + end;
    }

    private static string Put(Random random, string text, string odd)
    {
        var at = random.Next(text.Length + 1);
        return text.Insert(at, odd);
    }

    private static string Splice(Random random, string text, string other) => text[..random.Next(text.Length + 1)] + other[random.Next(other.Length + 1)..];
}
