using System.Globalization;
using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;

namespace CoatPlan.Prep;

/// <summary>One row of a rule file, read key by key; what is wrong goes to the list of problems.</summary>
internal sealed class RuleRow
{
    private readonly MapNode map;
    private readonly string where;
    private readonly ProblemList problems;
    private readonly HashSet<string> asked = new(StringComparer.Ordinal);

    /// <param name="key">The row's key.</param>
    /// <param name="map">The row.</param>
    /// <param name="where">What it is called in a problem, as in "rule `wash`".</param>
    /// <param name="problems">Takes what is wrong.</param>
    public RuleRow(string key, MapNode map, string where, ProblemList problems)
    {
        Key = key;
        this.map = map;
        this.where = where;
        this.problems = problems;
    }

    /// <summary>The row's key, unique in its section.</summary>
    public string Key { get; }

    /// <summary>A text that must be there; empty where it is not, which is a problem.</summary>
    public string Text(string key)
    {
        if (OptionalText(key) is { } text)
            return text;

        if (map.Find(key) is null)
            problems.Add(map.Mark, Sentences.MissingKey(key, where, ""));
        return "";
    }

    /// <summary>A text that may be left out.</summary>
    public string? OptionalText(string key)
    {
        asked.Add(key);
        return map.Find(key)?.Value switch
        {
            null => null,
            TextNode text => text.Text,
            var other => Wrong<string>(key, other, "a text"),
        };
    }

    /// <summary>Texts in brackets, or one text; empty where left out.</summary>
    public ImmutableArray<string> Texts(string key)
    {
        asked.Add(key);
        return map.Find(key)?.Value is { } node ? Texts(key, node) : [];
    }

    /// <summary>Yes, no, or left out.</summary>
    public bool? YesOrNo(string key) => OptionalText(key) switch
    {
        null => null,
        "true" => true,
        "false" => false,
        var other => Tell<bool?>(key, Sentences.NotABoolean($"`{key}` in {where}", other, null)),
    };

    /// <summary>A number, or left out.</summary>
    public double? Number(string key)
    {
        if (OptionalText(key) is not { } text)
            return null;
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) && number >= 0
            ? number
            : Tell<double?>(key, Sentences.WrongKind($"`{key}` in {where}", $"`{text}`", "a number, 0 or more"));
    }

    /// <summary>Keys with their words, as <c>when</c> has them.</summary>
    public ImmutableSortedDictionary<string, ImmutableArray<string>> Words(string key)
    {
        asked.Add(key);
        var words = ImmutableSortedDictionary.CreateBuilder<string, ImmutableArray<string>>(StringComparer.Ordinal);
        switch (map.Find(key)?.Value)
        {
            case null:
                break;
            case MapNode inner:
                foreach (var entry in inner.Entries)
                    words[entry.Key.Text] = Texts(entry.Key.Text, entry.Value);
                break;
            case var other:
                Wrong<string>(key, other, "keys with their words in brackets");
                break;
        }

        return words.ToImmutable();
    }

    /// <summary>When the row holds.</summary>
    public RuleCondition Condition() => new(Words("when"), Words("unless"));

    /// <summary>Says which keys nobody asked for.</summary>
    public void Close()
    {
        foreach (var entry in map.Entries.Where(entry => !asked.Contains(entry.Key.Text)))
            problems.Add(entry.Key.Mark, Sentences.UnknownKey(entry.Key.Text, where, asked.Order(StringComparer.Ordinal)));
    }

    private ImmutableArray<string> Texts(string key, Node node) => node switch
    {
        TextNode text => [text.Text],
        ListNode list when list.Items.All(item => item is TextNode) => [.. list.Items.Cast<TextNode>().Select(item => item.Text)],
        _ => Wrong<ImmutableArray<string>?>(key, node, "words in brackets") ?? [],
    };

    private T? Wrong<T>(string key, Node node, string expected)
    {
        problems.Add(node.Mark, Sentences.WrongKind($"`{key}` in {where}", node is MapNode ? "a map" : node is ListNode ? "a list" : "a text", expected));
        return default;
    }

    private T? Tell<T>(string key, Problem problem)
    {
        problems.Add(map.Find(key)?.Value.Mark ?? map.Mark, problem);
        return default;
    }
}
