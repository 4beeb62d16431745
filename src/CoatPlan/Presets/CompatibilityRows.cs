using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;

namespace CoatPlan.Presets;

/// <summary>Reads what goes on and over what.</summary>
internal sealed class CompatibilityRows
{
    // In the order of Verdict; nobody writes the last.
    private static readonly string[] Verdicts = ["yes", "primer", "window", "sealer", "test", "no"];

    private readonly ImmutableDictionary<string, CompatibilityReason> reasons;
    private readonly string[] classes;

    private CompatibilityRows(ImmutableDictionary<string, CompatibilityReason> reasons, string[] classes)
    {
        this.reasons = reasons;
        this.classes = classes;
    }

    /// <summary>Reads the whole table.</summary>
    /// <param name="layers">What the files say in it.</param>
    /// <param name="classes">Product classes.</param>
    /// <param name="materials">Materials.</param>
    /// <param name="finishes">Old finishes.</param>
    public static Compatibility Read(IReadOnlyList<PresetLayer> layers, string[] classes, string[] materials, string[] finishes)
    {
        if (layers.Count == 0)
        {
            return new()
            {
                Reasons = ImmutableDictionary<string, CompatibilityReason>.Empty,
                Materials = ImmutableDictionary<string, Judgement>.Empty,
                Classes = ImmutableDictionary<string, Judgement>.Empty,
                Finishes = ImmutableDictionary<string, Judgement>.Empty,
            };
        }

        var whole = new PresetRow("compatibility", [.. layers]);
        var reasons = whole.Rows("reasons").Select(Reason).ToImmutableDictionary(reason => reason.Key, StringComparer.Ordinal);
        var reader = new CompatibilityRows(reasons, classes);
        var read = new Compatibility
        {
            Reasons = reasons,
            Materials = reader.Cells(whole.Row("on-material"), materials, "material"),
            Classes = reader.Cells(whole.Row("over-class"), classes, "product class"),
            Finishes = reader.Cells(whole.Row("over-finish"), finishes, "finish"),
        };
        whole.Finish();
        return read;
    }

    private static CompatibilityReason Reason(PresetRow row)
    {
        var reason = new CompatibilityReason(row.Word, row.Text("text"), row.Provenance());
        row.Finish();
        return reason;
    }

    private ImmutableDictionary<string, Judgement> Cells(PresetRow? table, string[] known, string what)
    {
        var cells = ImmutableDictionary.CreateBuilder<string, Judgement>(StringComparer.Ordinal);
        foreach (var layer in table?.EachLayer() ?? [])
        {
            var columns = layer.Words("columns", what, known);
            var provenance = layer.Has("status") || !layer.IsOverride ? layer.Provenance() : new(layer.FileName, Status.Estimate);
            foreach (var (key, value, of) in layer.Entries("rows", merged: true))
            {
                if (!classes.Contains(key.Text)) of.File.Problems.Add(key.Mark, Sentences.UnknownWord("product class", key.Text, classes, null));
                foreach (var cell in Row(key.Text, value, columns, known, what, of))
                {
                    if (Judge(cell.Value, provenance, of.File.Problems) is { } judgement) cells[Compatibility.Pair(key.Text, cell.Key)] = judgement;
                }
            }

            layer.Finish();
        }

        return cells.ToImmutable();
    }

    // A row is a list in the order of the columns, or a map of column to cell.
    private static IEnumerable<PresetCell> Row(
        string name, Node value, ImmutableArray<string> columns, string[] known, string what, PresetLayer layer)
    {
        var problems = layer.File.Problems;
        if (value is ListNode list && list.Items.Length == columns.Length) return columns.Zip(list.Items, (column, cell) => new PresetCell(column, cell));
        if (value is MapNode map)
        {
            foreach (var entry in map.Entries.Where(entry => !known.Contains(entry.Key.Text)))
            {
                problems.Add(entry.Key.Mark, Sentences.UnknownWord(what, entry.Key.Text, known, null));
            }

            return map.Entries.Select(entry => new PresetCell(entry.Key.Text, entry.Value));
        }

        problems.Add(value.Mark, Sentences.WrongKind($"row `{name}`", PresetFile.Kind(value), $"a list of {columns.Length} cells, or a map of {what} to cell"));
        return [];
    }

    private Judgement? Judge(Node cell, Provenance table, ProblemList problems)
    {
        string text = (cell as TextNode)?.Text ?? "";
        int space = text.IndexOf(' ', StringComparison.Ordinal);
        string word = space < 0 ? text : text[..space];
        string key = space < 0 ? "" : text[(space + 1)..];
        int verdict = Array.IndexOf(Verdicts, word);
        if (verdict < 0)
        {
            problems.Add(cell.Mark, Sentences.UnknownWord("verdict", word, Verdicts, null));
            return null;
        }

        if (reasons.TryGetValue(key, out var reason))
        {
            return new((Verdict)verdict, key, reason.Text, new(reason.Provenance.Source, Weaker(table.Status, reason.Provenance.Status)));
        }

        problems.Add(cell.Mark, Sentences.UnknownWord("reason", key, reasons.Keys.Order(StringComparer.Ordinal), null));
        return null;
    }

    private static Status Weaker(Status a, Status b) => a > b ? a : b;
}
