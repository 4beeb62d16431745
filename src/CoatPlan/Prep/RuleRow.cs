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

    /// <summary>A text that must be one of some names; left out: null. Another is a problem and is given as it stands.</summary>
    /// <param name="key">The key.</param>
    /// <param name="what">What the names are of, as in "way".</param>
    /// <param name="known">The names.</param>
    public string? Name(string key, string what, IReadOnlyCollection<string> known)
    {
        var name = OptionalText(key);
        return name is null || known.Contains(name) ? name : Tell(key, Sentences.UnknownName(what, name, known)) ?? name;
    }

    /// <summary>Texts that must each be one of some names; those that are not are problems and left out.</summary>
    /// <param name="key">The key.</param>
    /// <param name="what">What the names are of, as in "warning".</param>
    /// <param name="known">The names.</param>
    public ImmutableArray<string> Names(string key, string what, IReadOnlyCollection<string> known)
    {
        var names = Texts(key);
        foreach (var name in names.Where(name => !known.Contains(name)))
            Tell(key, Sentences.UnknownName(what, name, known));
        return [.. names.Where(known.Contains)];
    }

    /// <summary>The keys under a key with their words, as <c>when</c> has them.</summary>
    /// <param name="key">The key.</param>
    /// <param name="known">Keys that may stand under it.</param>
    private ImmutableSortedDictionary<string, ImmutableArray<string>> Words(string key, IReadOnlyCollection<string> known)
    {
        asked.Add(key);
        var words = ImmutableSortedDictionary.CreateBuilder<string, ImmutableArray<string>>(StringComparer.Ordinal);
        switch (map.Find(key)?.Value)
        {
            case null:
                break;
            case MapNode inner:
                foreach (var entry in inner.Entries)
                {
                    if (!known.Contains(entry.Key.Text))
                        problems.Add(entry.Key.Mark, Sentences.UnknownKey(entry.Key.Text, $"`{key}` of {where}", known));
                    words[entry.Key.Text] = Texts(entry.Key.Text, entry.Value);
                }

                break;
            case var other:
                Wrong<string>(key, other, "keys with their words in brackets");
                break;
        }

        return words.ToImmutable();
    }

    /// <summary>When the row holds.</summary>
    /// <param name="known">Keys that it may ask for.</param>
    public RuleCondition Condition(IReadOnlyCollection<string> known) => new(Words("when", known), Words("unless", known));

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

    private string? Tell(string key, Problem problem) => Tell<string>(key, problem);
}
