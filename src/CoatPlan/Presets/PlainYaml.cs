using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;

namespace CoatPlan.Presets;

/// <summary>Reads the plain part of YAML in which preset files are written, many times quicker than a full parser.</summary>
/// <remarks>
/// Block maps, flow maps and flow lists, one-line texts plain or quoted, comments. Anything else, and anything that is wrong,
/// makes it give up: the full reader then reads the text, and it alone says what is wrong.
/// A program that starts, plans and ends spends its time in code that was not yet optimised; a full parser takes a fifth of
/// a second there for the built-in files.
/// </remarks>
internal sealed class PlainYaml
{
    private const string Indicators = "-?:,[]{}#&*!|>'\"%@`";

    private readonly string text;
    private int at;
    private int line = 1;
    private int lineStart;
    private int values;

    private PlainYaml(string text) => this.text = text;

    /// <summary>Reads a text.</summary>
    /// <param name="text">The text, without a byte order mark.</param>
    /// <returns>The map at its root; null: it is more than plain, or wrong.</returns>
    public static MapNode? Read(string text)
    {
        if (text.Length > YamlLimits.Bytes) return null;
        var reader = new PlainYaml(text);
        if (!reader.ToContent() || reader.Column != 1) return null;
        var root = reader.BlockMap(column: 1, level: 1);
        return root is not null && reader.at == text.Length ? root : null;
    }

    private int Column => at - lineStart + 1;

    private char Here => at < text.Length ? text[at] : '\n';

    private MapNode? BlockMap(int column, int level)
    {
        if (level > YamlLimits.Levels) return null;
        var mark = MarkHere();
        int start = at;
        var entries = ImmutableArray.CreateBuilder<MapEntry>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        do
        {
            if (Key(inFlow: false) is not { } key || !seen.Add(key.Text)) return null;
            at++;
            SkipSpaces();
            if (BlockValue(column, level + 1) is not { } value) return null;
            entries.Add(new(key, value));
            if (!ToContent()) break;
        }
        while (Column == column);
        return Column > column && at < text.Length ? null : Map(entries, mark, start, at, isFlow: false);
    }

    // Begins behind the colon of a key, ends behind the value; null also where nothing is there.
    private Node? BlockValue(int column, int level)
    {
        if (!AtLineEnd())
        {
            bool isFlow = Here is '[' or '{';
            Node? value = isFlow ? Flow(level) : Text(inFlow: false);
            SkipSpaces();
            return AtLineEnd() ? value : null;
        }

        return ToContent() && Column > column ? BlockMap(Column, level) : null;
    }

    private Node? Flow(int level)
    {
        if (level > YamlLimits.Levels) return null;
        return Here switch
        {
            '[' => FlowList(level),
            '{' => FlowMap(level),
            _ => Text(inFlow: true),
        };
    }

    private ListNode? FlowList(int level)
    {
        var mark = MarkHere();
        int start = at++;
        var items = ImmutableArray.CreateBuilder<Node>();
        while (true)
        {
            if (!ToContent()) return null;
            if (Here == ']') break;
            if (Flow(level + 1) is not { } item) return null;
            items.Add(item);
            if (!ToContent() || Here is not (',' or ']')) return null;
            if (Here == ',') at++;
        }

        at++;
        long size = 1;
        int height = 0;
        foreach (var item in items)
        {
            size += item.Size;
            height = Math.Max(height, item.Height);
        }

        return new() { Mark = mark, Start = start, End = at, IsFlow = true, Items = items.ToImmutable(), Size = size, Height = 1 + height };
    }

    private MapNode? FlowMap(int level)
    {
        var mark = MarkHere();
        int start = at++;
        var entries = ImmutableArray.CreateBuilder<MapEntry>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (true)
        {
            if (!ToContent()) return null;
            if (Here == '}') break;
            if (Key(inFlow: true) is not { } key || !seen.Add(key.Text)) return null;
            at++;
            if (!ToContent() || Flow(level + 1) is not { } value) return null;
            entries.Add(new(key, value));
            if (!ToContent() || Here is not (',' or '}')) return null;
            if (Here == ',') at++;
        }

        at++;
        return Map(entries, mark, start, at, isFlow: true);
    }

    // Leaves the reader on the colon.
    private TextNode? Key(bool inFlow)
    {
        var key = Text(inFlow);
        SkipSpaces();
        bool isKey = key is not null && Here == ':' && at + 1 <= text.Length && (at + 1 == text.Length || text[at + 1] is ' ' or '\n');
        return isKey ? key : null;
    }

    // More values than a text may have are refused, with their place, by the reader of all texts.
    private TextNode? Text(bool inFlow) => ++values > YamlLimits.Values ? null : Here == '\'' ? Quoted() : Plain(inFlow);

    private TextNode? Plain(bool inFlow)
    {
        var mark = MarkHere();
        int start = at;
        bool isNumber = Here == '-' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]);
        if (!isNumber && (Here == '\n' || Indicators.Contains(Here, StringComparison.Ordinal))) return null;
        while (at < text.Length)
        {
            char c = text[at];
            if (c == '\n' || (inFlow && c is ',' or '[' or ']' or '{' or '}')) break;
            if (c == ':' && (at + 1 == text.Length || text[at + 1] is ' ' or '\n' or ',' or '[' or ']' or '{' or '}')) break;
            if (c == '#' && text[at - 1] == ' ') break;
            if (IsForeign(c)) return null;
            at++;
        }

        int end = at;
        while (end > start && text[end - 1] == ' ') end--;
        at = end;
        return Node(text[start..end], mark, start, isPlain: true);
    }

    private TextNode? Quoted()
    {
        var mark = MarkHere();
        int start = at++;
        while (at < text.Length)
        {
            if (text[at] == '\n' || IsForeign(text[at])) return null;
            if (text[at] == '\'')
            {
                if (at + 1 == text.Length || text[at + 1] != '\'')
                {
                    at++;
                    string value = text[(start + 1)..(at - 1)].Replace("''", "'", StringComparison.Ordinal);
                    return Node(value, mark, start, isPlain: false);
                }

                at++;
            }

            at++;
        }

        return null;
    }

    private TextNode Node(string value, Mark mark, int start, bool isPlain) =>
        new() { Mark = mark, Start = start, End = at, Text = value, IsPlain = isPlain, Size = 1, Height = 1 };

    private static MapNode Map(ImmutableArray<MapEntry>.Builder entries, Mark mark, int start, int end, bool isFlow)
    {
        long size = 1;
        int height = 0;
        foreach (var entry in entries)
        {
            size += 1 + entry.Value.Size;
            height = Math.Max(height, entry.Value.Height);
        }

        return new() { Mark = mark, Start = start, End = end, IsFlow = isFlow, Entries = entries.ToImmutable(), Size = size, Height = 1 + height };
    }

    // Over spaces, line ends and comments; false: the text ends, or something stands there that is more than plain.
    private bool ToContent()
    {
        while (at < text.Length)
        {
            char c = text[at];
            if (c == '\n')
            {
                at++;
                line++;
                lineStart = at;
            }
            else if (c == ' ') at++;
            else if (c == '#' && (at == lineStart || text[at - 1] == ' ')) SkipComment();
            else return !IsForeign(c);
        }

        return false;
    }

    private bool AtLineEnd()
    {
        if (Here == '#' && text[at - 1] == ' ') SkipComment();
        return Here == '\n';
    }

    private void SkipComment()
    {
        int end = text.IndexOf('\n', at);
        at = end < 0 ? text.Length : end;
    }

    private void SkipSpaces()
    {
        while (Here == ' ') at++;
    }

    private static bool IsForeign(char c) => c < ' ' || c is (>= '\u007f' and < '\u00a0') or '\u2028' or '\u2029' or '\uFEFF' || char.IsSurrogate(c);

    private Mark MarkHere() => new(line, Column);
}
