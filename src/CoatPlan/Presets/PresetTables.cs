using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;

namespace CoatPlan.Presets;

/// <summary>All files' tables by key.</summary>
internal sealed class PresetTables
{
    private static readonly string[] Known =
    [
        "materials", "film", "finishes", "lightness", "conditions", "forms", "reaches", "methods", "operations", "hiding", "products",
        "solvents", "compatibility", "pieces", "consumables", "tapes", "abrasives", "grit-tasks", "respirators", "service-heat",
        "mask-kinds", "neighbours", "hazards", "figures", "sources",
    ];

    private readonly Dictionary<string, List<PresetLayer>> layers = new(StringComparer.Ordinal);

    /// <param name="files">Built-in files first.</param>
    public PresetTables(IEnumerable<PresetFile> files)
    {
        foreach (var file in files)
        {
            foreach (var (key, value) in file.Tables) Add(key, value, file);
        }
    }

    /// <summary>Every row of a table as a record, in order; unknown keys of rows are told.</summary>
    public ImmutableArray<T> Read<T>(string table, Func<PresetRow, T> read)
    {
        var rows = PresetTable.RowsOf(table, Layers(table));
        var records = ImmutableArray.CreateBuilder<T>(rows.Length);
        foreach (var row in rows)
        {
            records.Add(read(row));
            row.Finish();
        }

        return records.MoveToImmutable();
    }

    /// <summary>What the files say in a table, built-in first.</summary>
    public IReadOnlyList<PresetLayer> Layers(string table) => layers.GetValueOrDefault(table) ?? [];

    private void Add(TextNode key, Node value, PresetFile file)
    {
        if (!Known.Contains(key.Text))
        {
            file.Problems.Add(key.Mark, Sentences.UnknownKey(key.Text, "the presets", Known));
            return;
        }

        if (value is not MapNode map)
        {
            file.Problems.Add(value.Mark, Sentences.WrongKind($"`{key.Text}`", PresetFile.Kind(value), "a map of rows"));
            return;
        }

        if (!layers.TryGetValue(key.Text, out var found)) layers.Add(key.Text, found = []);
        found.Add(new(key, map, file));
    }
}
