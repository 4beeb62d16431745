using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;

namespace CoatPlan.Presets;

/// <summary>A preset file that is being read: its root, its table of sources, and what is wrong in it.</summary>
internal sealed class PresetFile
{
    private PresetFile(string name, bool isOverride)
    {
        Name = name;
        IsOverride = isOverride;
        Problems = new(name);
    }

    /// <summary>The name as problems tell it.</summary>
    public string Name { get; }

    /// <summary>Whether it is the user's, and so may say parts of rows that are already there.</summary>
    public bool IsOverride { get; }

    /// <summary>What is wrong in it.</summary>
    public ProblemList Problems { get; private init; }

    /// <summary>The tables; empty where the text could not be read.</summary>
    public ImmutableArray<MapEntry> Tables { get; private init; } = [];

    /// <summary>Sources that rows cite by key.</summary>
    public ImmutableDictionary<string, string> Sources { get; private init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Reads the text as far as tables.</summary>
    public static PresetFile Read(PresetText preset, bool isOverride)
    {
        var file = new PresetFile(preset.Name, isOverride);
        Node? root = PlainYaml.Read(preset.Text) ?? YamlText.Read(preset.Text, file.Problems);
        if (root is null)
        {
            if (file.Problems.Count == 0) file.Problems.Add(default, Sentences.EmptyFile("tables of presets such as `materials:`"));
            return file;
        }

        if (root is not MapNode map)
        {
            file.Problems.Add(root.Mark, Sentences.WrongKind("the file", Kind(root), "tables of presets such as `materials:`"));
            return file;
        }

        return new(preset.Name, isOverride)
        {
            Problems = file.Problems,
            Tables = [.. map.Entries.Where(entry => entry.Key.Text != "sources")],
            Sources = SourcesOf(map, file.Problems),
        };
    }

    /// <summary>What a node is, for a sentence.</summary>
    public static string Kind(Node node) => node switch
    {
        MapNode => "a map",
        ListNode => "a list",
        TextNode { IsMissing: true } or TextNode { IsNull: true } => "empty",
        TextNode text => $"`{text.Text}`",
        _ => "something else",
    };

    private static ImmutableDictionary<string, string> SourcesOf(MapNode root, ProblemList problems)
    {
        if (root.Find("sources") is not { } entry) return ImmutableDictionary<string, string>.Empty;
        if (entry.Value is not MapNode map)
        {
            problems.Add(entry.Value.Mark, Sentences.WrongKind("`sources`", Kind(entry.Value), "a map of key to source"));
            return ImmutableDictionary<string, string>.Empty;
        }

        var sources = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var (key, value) in map.Entries)
        {
            if (value is TextNode { IsMissing: false, IsNull: false } text) sources.Add(key.Text, text.Text);
            else problems.Add(value.Mark, Sentences.WrongKind($"source `{key.Text}`", Kind(value), "text"));
        }

        return sources.ToImmutable();
    }
}
