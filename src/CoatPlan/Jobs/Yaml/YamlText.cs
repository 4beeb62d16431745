using CoatPlan.Problems;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;
using Mark = CoatPlan.Problems.Mark;

namespace CoatPlan.Jobs.Yaml;

/// <summary>Reads YAML 1.2 (and JSON, which is YAML) into nodes that know where they stand.</summary>
/// <remarks>
/// Repeated keys, aliases into themselves, several documents and more than <see cref="YamlLimits"/> allows are problems.
/// No text makes it throw, take long, or hold much more memory than the text itself.
/// </remarks>
internal sealed class YamlText
{
    private const string StandardTag = "tag:yaml.org,2002:";

    private readonly string text;
    private readonly LineStarts lines;
    private readonly ProblemList problems;
    private readonly Parser parser;
    private readonly Dictionary<string, Node?> anchors = new(StringComparer.Ordinal);
    private readonly Stack<int> openBrackets = new();
    private long values;

    private YamlText(string text, ProblemList problems)
    {
        this.text = text;
        this.problems = problems;
        lines = new(text);
        parser = new Parser(new StringReader(text));
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">The text, without a byte order mark.</param>
    /// <param name="problems">Takes what is wrong.</param>
    /// <returns>The root; null: nothing is there, or the text is no YAML, which is among the problems.</returns>
    public static Node? Read(string text, ProblemList problems)
    {
        if (text.Length > YamlLimits.Bytes)
        {
            problems.Add(default, Sentences.TooLarge(YamlLimits.Bytes));
            return null;
        }

        var reader = new YamlText(text, problems);
        if (reader.HoldsControlCharacters()) return null;
        try
        {
            return reader.Document();
        }
        catch (Refused)
        {
            return null;
        }
        catch (YamlException exception)
        {
            reader.SayWhatIsNoYaml(exception);
            return null;
        }
    }

    // The parser trips over some broken texts instead of refusing them; for the reader of the file that is the same.
    private bool Advance()
    {
        var before = parser.Current;
        try
        {
            return parser.MoveNext();
        }
        catch (Exception exception) when (exception is not YamlException)
        {
            throw RefuseFrom(before is null ? 0 : Offset(before.End));
        }
    }

    // An open bracket is told where it opens: that is where it is mended, and the parser stops anywhere behind it.
    private Refused RefuseFrom(int stopped)
    {
        if (openBrackets.TryPeek(out int open)) problems.Add(lines.MarkOf(open), Sentences.UnclosedBracket());
        else problems.Add(lines.MarkOf(stopped), Sentences.NotYaml());
        return new Refused();
    }

    private bool HoldsControlCharacters()
    {
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            bool lone = char.IsSurrogate(c) && !(i + 1 < text.Length && char.IsSurrogatePair(c, text[i + 1]));
            if (!lone && char.IsHighSurrogate(c)) i++;
            bool control = char.IsControl(c) && c is not ('\t' or '\n' or '\r');
            if (!control && !lone && c is not ('\uFFFE' or '\uFFFF')) continue;
            problems.Add(lines.MarkOf(i), Sentences.ControlCharacter(c));
            return true;
        }

        return false;
    }

    private Node? Document()
    {
        Advance();
        Advance();
        if (parser.Current is StreamEnd or null)
        {
            return null;
        }

        Advance();
        var root = Value(level: 1);
        Advance();
        if (Advance() && parser.Current is DocumentStart second)
        {
            problems.Add(MarkOf(second.Start), Sentences.SeveralDocuments());
        }

        return root;
    }

    // Leaves the parser on the last event of the value.
    private Node Value(int level)
    {
        var start = parser.Current!;
        if (level > YamlLimits.Levels) throw Refuse(start, Sentences.TooDeep(YamlLimits.Levels));
        if (start is AnchorAlias alias) return Repeated(alias, level);
        if (++values > YamlLimits.Values) throw Refuse(start, Sentences.TooMany(YamlLimits.Values));
        if (start is not NodeEvent nodeEvent || start is not (Scalar or SequenceStart or MappingStart)) throw RefuseFrom(Offset(start.Start));
        string? anchor = nodeEvent.Anchor.IsEmpty ? null : nodeEvent.Anchor.Value;
        if (anchor is not null) anchors[anchor] = null;
        bool marked = anchor is not null || !nodeEvent.Tag.IsEmpty;
        if (!nodeEvent.Tag.IsEmpty) CheckTag(nodeEvent);
        Node node = start switch
        {
            Scalar scalar => Text(scalar, marked),
            SequenceStart sequence => List(sequence, level, marked),
            _ => Map((MappingStart)start, level, marked),
        };
        if (anchor is not null) anchors[anchor] = node;
        return node;
    }

    private Node Repeated(AnchorAlias alias, int level)
    {
        string name = alias.Value.Value;
        if (!anchors.TryGetValue(name, out var node)) throw Refuse(alias, Sentences.UnknownAlias(name, anchors.Keys));
        if (node is null) throw Refuse(alias, Sentences.Cycle(name));
        values += node.Size;
        if (values > YamlLimits.Values) throw Refuse(alias, Sentences.TooMany(YamlLimits.Values));
        if (level + node.Height - 1 > YamlLimits.Levels) throw Refuse(alias, Sentences.TooDeep(YamlLimits.Levels));
        return node;
    }

    private TextNode Text(Scalar scalar, bool marked) => new()
    {
        Mark = MarkOf(scalar.Start),
        Start = Offset(scalar.Start),
        End = Offset(scalar.End),
        IsMarked = marked,
        Text = scalar.Value,
        IsPlain = scalar.Style is ScalarStyle.Plain,
        IsBlock = scalar.Style is ScalarStyle.Literal or ScalarStyle.Folded,
        Size = 1,
        Height = 1,
    };

    private ListNode List(SequenceStart start, int level, bool marked)
    {
        bool flow = start.Style is SequenceStyle.Flow;
        if (flow) openBrackets.Push(Offset(start.Start));
        var items = ImmutableArray.CreateBuilder<Node>();
        var places = ImmutableArray.CreateBuilder<Stretch>();
        Advance();
        while (parser.Current is not SequenceEnd)
        {
            var itemStart = parser.Current!;
            items.Add(Value(level + 1));
            places.Add(PlaceOf(itemStart, items[^1]));
            Advance();
        }

        if (flow) openBrackets.Pop();
        return new()
        {
            Mark = MarkOf(start.Start),
            Start = Offset(start.Start),
            End = EndOf(parser.Current, flow),
            IsMarked = marked,
            IsFlow = flow,
            Items = items.ToImmutable(),
            Places = places.ToImmutable(),
            Size = 1 + items.Sum(item => item.Size),
            Height = 1 + items.Select(item => item.Height).DefaultIfEmpty().Max(),
        };
    }

    private MapNode Map(MappingStart start, int level, bool marked)
    {
        bool flow = start.Style is MappingStyle.Flow;
        if (flow) openBrackets.Push(Offset(start.Start));
        var entries = ImmutableArray.CreateBuilder<MapEntry>();
        var seen = new Dictionary<string, Mark>(StringComparer.Ordinal);
        Advance();
        while (parser.Current is not MappingEnd)
        {
            var keyStart = parser.Current!.Start;
            var key = Value(level + 1) as TextNode;
            Advance();
            var valueStart = parser.Current!;
            var value = Value(level + 1);
            var at = PlaceOf(valueStart, value);
            Advance();
            if (key is null) problems.Add(MarkOf(keyStart), Sentences.KeyIsNotText());
            else if (seen.TryAdd(key.Text, MarkOf(keyStart))) entries.Add(new(key, value) { At = at });
            else problems.Add(MarkOf(keyStart), Sentences.RepeatedKey(key.Text, seen[key.Text]));
        }

        if (flow) openBrackets.Pop();
        return new()
        {
            Mark = MarkOf(start.Start),
            Start = Offset(start.Start),
            End = EndOf(parser.Current, flow),
            IsMarked = marked,
            IsFlow = flow,
            Entries = entries.ToImmutable(),
            Size = 1 + entries.Sum(entry => entry.Key.Size + entry.Value.Size),
            Height = 1 + entries.Select(entry => entry.Value.Height).DefaultIfEmpty().Max(),
        };
    }

    private void CheckTag(NodeEvent node)
    {
        string tag = node.Tag.IsNonSpecific ? StandardTag : node.Tag.Value;
        if (!tag.StartsWith(StandardTag, StringComparison.Ordinal)) problems.Add(MarkOf(node.Start), Sentences.Tag(tag));
    }

    private Stretch PlaceOf(ParsingEvent start, Node node) => start is AnchorAlias
        ? new(Offset(start.Start), Offset(start.End), IsAlias: true)
        : new(node.Start, node.End, IsAlias: false);

    private int EndOf(ParsingEvent end, bool flow) => Math.Min(text.Length, Offset(end.Start) + (flow ? 1 : 0));

    private int Offset(YamlDotNet.Core.Mark mark) => (int)Math.Clamp(mark.Index, 0, text.Length);

    private Mark MarkOf(YamlDotNet.Core.Mark mark) => lines.MarkOf(Offset(mark));

    private Refused Refuse(ParsingEvent where, Problem problem)
    {
        problems.Add(MarkOf(where.Start), problem);
        return new Refused();
    }

    // The parser's own words are for programmers; what usually lies behind them is said instead.
    private void SayWhatIsNoYaml(YamlException exception)
    {
        string said = exception.Message;
        int tab = TabIndent(Offset(exception.Start), onlyThatLine: !said.Contains("tab", StringComparison.Ordinal));
        if (tab >= 0)
        {
            problems.Add(lines.MarkOf(tab), Sentences.Tab());
            return;
        }

        if (said.Contains("quoted scalar", StringComparison.Ordinal)) problems.Add(MarkOf(exception.Start), Sentences.UnclosedQuote());
        else if (said.Contains("cannot start", StringComparison.Ordinal)) problems.Add(MarkOf(exception.Start), Sentences.BadCharacter());
        else if (openBrackets.Count == 0 && said.Contains("invalid mapping", StringComparison.Ordinal))
        {
            problems.Add(MarkOf(exception.Start), Sentences.TwoKeysOnOneLine());
        }
        else RefuseFrom(Offset(exception.Start));
    }

    // The first tab that indents the line in which the parser stopped or, where it says so, a later one; -1: none.
    private int TabIndent(int stopped, bool onlyThatLine)
    {
        int line = stopped == 0 ? 0 : text.LastIndexOf('\n', stopped - 1) + 1;
        while (line < text.Length)
        {
            for (int i = line; i < text.Length && text[i] is ' ' or '\t'; i++)
            {
                if (text[i] == '\t') return i;
            }

            int end = text.IndexOf('\n', line);
            if (end < 0 || onlyThatLine) break;
            line = end + 1;
        }

        return -1;
    }

    private sealed class Refused : Exception;
}
