using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;

namespace CoatPlan.Presets;

/// <summary>The rows of one table, the layers of all files over each other.</summary>
internal static class PresetTable
{
    /// <summary>The rows of layers, in the order in which files first name them.</summary>
    /// <param name="table">The table's key, for sentences.</param>
    /// <param name="layers">Maps of row to fields, built-in first.</param>
    public static ImmutableArray<PresetRow> RowsOf(string table, IEnumerable<PresetLayer> layers)
    {
        var order = new List<string>();
        var byName = new Dictionary<string, List<PresetLayer>>(StringComparer.Ordinal);
        foreach (var layer in layers)
        {
            foreach (var (key, value) in layer.Map.Entries)
            {
                if (value is not MapNode map)
                {
                    layer.File.Problems.Add(value.Mark, Sentences.WrongKind($"{table} `{key.Text}`", PresetFile.Kind(value), "a map of fields"));
                    continue;
                }

                if (!byName.TryGetValue(key.Text, out var rowLayers))
                {
                    byName.Add(key.Text, rowLayers = []);
                    order.Add(key.Text);
                }
                else if (!layer.File.IsOverride)
                {
                    layer.File.Problems.Add(key.Mark, Sentences.RepeatedName($"row of {table}", key.Text, rowLayers[0].Key.Mark));
                }

                rowLayers.Add(new(key, map, layer.File));
            }
        }

        return [.. order.Select(name => new PresetRow($"{table} `{name}`", [.. byName[name]]))];
    }
}
