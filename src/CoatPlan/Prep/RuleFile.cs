using CoatPlan.Jobs.Yaml;
using CoatPlan.Presets;
using CoatPlan.Problems;

namespace CoatPlan.Prep;

/// <summary>A rule file's sections and their rows.</summary>
internal sealed class RuleFile
{
    private readonly MapNode? root;
    private readonly ProblemList problems;
    private readonly HashSet<string> asked = new(StringComparer.Ordinal);

    /// <param name="text">The file.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public RuleFile(string text, ProblemList problems)
    {
        this.problems = problems;
        root = PlainYaml.Read(text) ?? YamlText.Read(text, problems) as MapNode;
        if (root is null && problems.Count == 0)
            problems.Add(default, Sentences.EmptyFile("sections with rows"));
    }

    /// <summary>The text of a file of the library.</summary>
    /// <param name="name">A name of <see cref="RuleFiles"/>.</param>
    public static string Embedded(string name) => BuiltInPresets.Texts.Single(file => RuleFiles.Is(file, name)).Text;

    /// <summary>The rows of a section, in order; none where it is left out.</summary>
    /// <param name="section">The section's key.</param>
    /// <param name="where">What a row is called in a problem.</param>
    /// <param name="read">Reads one row.</param>
    public ImmutableArray<T> Rows<T>(string section, string where, Func<RuleRow, T> read)
    {
        var rows = ImmutableArray.CreateBuilder<T>();
        foreach (var entry in Entries(section))
        {
            if (entry.Value is MapNode map)
                rows.Add(One(entry.Key.Text, map, $"{where} `{entry.Key.Text}`", read));
            else
                problems.Add(entry.Value.Mark, Sentences.WrongKind($"{where} `{entry.Key.Text}`", "no map", "keys with values"));
        }

        return rows.ToImmutable();
    }

    /// <summary>The keys of a section's rows, in order; none where it is left out.</summary>
    /// <param name="section">The section's key.</param>
    public ImmutableArray<string> Keys(string section) =>
        root?.Find(section)?.Value is MapNode map ? [.. map.Entries.Select(entry => entry.Key.Text)] : [];

    /// <summary>A section of plain texts by key; empty where it is left out.</summary>
    /// <param name="section">The section's key.</param>
    public ImmutableSortedDictionary<string, string> Texts(string section)
    {
        var texts = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var entry in Entries(section))
        {
            if (entry.Value is TextNode text)
                texts[entry.Key.Text] = text.Text;
            else
                problems.Add(entry.Value.Mark, Sentences.WrongKind($"`{entry.Key.Text}`", "no text", "a text"));
        }

        return texts.ToImmutable();
    }

    /// <summary>A section that is one row; null where it is left out.</summary>
    /// <param name="section">The section's key.</param>
    /// <param name="read">Reads it.</param>
    public T? Single<T>(string section, Func<RuleRow, T> read)
        where T : class
    {
        asked.Add(section);
        return root?.Find(section)?.Value is MapNode map ? One(section, map, $"`{section}`", read) : null;
    }

    /// <summary>Says which sections nobody asked for.</summary>
    public void Close()
    {
        foreach (var entry in root?.Entries ?? [])
        {
            if (!asked.Contains(entry.Key.Text))
                problems.Add(entry.Key.Mark, Sentences.UnknownKey(entry.Key.Text, "the file", asked.Order(StringComparer.Ordinal)));
        }
    }

    private ImmutableArray<MapEntry> Entries(string section)
    {
        asked.Add(section);
        if (root?.Find(section)?.Value is not { } node)
            return [];
        if (node is MapNode map)
            return map.Entries;

        problems.Add(node.Mark, Sentences.WrongKind($"`{section}`", "no map", "rows by key"));
        return [];
    }

    private T One<T>(string key, MapNode map, string where, Func<RuleRow, T> read)
    {
        var row = new RuleRow(key, map, where, problems);
        var value = read(row);
        row.Close();
        return value;
    }
}
