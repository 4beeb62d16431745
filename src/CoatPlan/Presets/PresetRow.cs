using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;
using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>A row of a table, read field by field; a user's layers lie over the built-in one and win field by field.</summary>
/// <remarks>
/// Every read asks for a key. What nobody asked for is unknown, and <see cref="Finish"/> says so. A field that is wrong is a
/// problem and reads as nothing, so that one reading finds all mistakes.
/// </remarks>
internal sealed class PresetRow
{
    // In the order of Status.
    private static readonly string[] Statuses =
        ["published", "published, read second-hand", "computed", "common practice", "estimate", "from memory"];

    private const string SecondHand = "second-hand";

    private readonly ImmutableArray<PresetLayer> layers;
    private readonly List<string> asked = [];

    /// <param name="where">The row in words, such as <c>materials `steel`</c>.</param>
    /// <param name="layers">What the files say of it, built-in first; at least one.</param>
    public PresetRow(string where, ImmutableArray<PresetLayer> layers)
    {
        Where = where;
        this.layers = layers;
    }

    /// <summary>The row in words.</summary>
    public string Where { get; }

    /// <summary>The row's word.</summary>
    public string Word => layers[0].Key.Text;

    /// <summary>Whether any layer has the key; asks for it.</summary>
    public bool Has(string key) => Find(key) is not null;

    /// <summary>A text that must be there.</summary>
    public string Text(string key) => TextNode(key, "text")?.Text ?? "";

    /// <summary>A text, or what stands for none.</summary>
    public string TextOr(string key, string none) => Has(key) ? Text(key) : none;

    /// <summary><c>true</c> or <c>false</c>; false where it is not said.</summary>
    public bool Flag(string key, bool none = false)
    {
        if (!Has(key) || TextNode(key, "`true` or `false`") is not { } node) return none;
        if (node.Text is "true" or "false") return node.Text == "true";
        Say(key, Sentences.NotABoolean(What(key), node.Text, Nearest.To(node.Text, ["true", "false"])));
        return none;
    }

    /// <summary>A bare number within bounds.</summary>
    public double Number(string key, Bounds bounds)
    {
        if (PlainText(key) is { } text && PlainFigure.Split(text, out double number, out string unit) && unit.Length == 0 && bounds.Hold(number)) return number;
        return Measured(key, QuantityText.Number, value => value, bounds);
    }

    /// <summary>A length.</summary>
    public Length Length(string key)
    {
        const double Most = 3_000;
        bool isPlain = PlainFigure.Split(PlainText(key) ?? "", out double number, out string unit) && number is > 0 and <= Most;
        return (isPlain ? unit : "") switch
        {
            "mil" => UnitsNet.Length.FromMils(number),
            "µm" => UnitsNet.Length.FromMicrometers(number),
            "mm" => UnitsNet.Length.FromMillimeters(number),
            "in" => UnitsNet.Length.FromInches(number),
            "ft" => UnitsNet.Length.FromFeet(number),
            _ => Measured(key, QuantityText.Length, value => value.Meters, PresetBounds.Length),
        };
    }

    /// <summary>An area.</summary>
    public Area Area(string key)
    {
        const double Most = 10_000;
        bool isPlain = PlainFigure.Split(PlainText(key) ?? "", out double number, out string unit) && number is > 0 and <= Most;
        return (isPlain ? unit : "") switch
        {
            "ft2" => UnitsNet.Area.FromSquareFeet(number),
            "m2" => UnitsNet.Area.FromSquareMeters(number),
            _ => Measured(key, QuantityText.Area, value => value.SquareMeters, PresetBounds.Area),
        };
    }

    /// <summary>A duration.</summary>
    public Duration Time(string key) =>
        PlainText(key) is { } text && PlainFigure.Time(text) is { } time && PresetBounds.Time.Hold(time.TotalMinutes)
            ? time
            : Measured(key, QuantityText.Duration, value => value.TotalMinutes, PresetBounds.Time);

    /// <summary>A temperature.</summary>
    public Temperature Temperature(string key)
    {
        bool isPlain = PlainFigure.Split(PlainText(key) ?? "", out double number, out string unit)
            && PresetBounds.Temperature.Hold(number);
        return (isPlain ? unit : "") switch
        {
            "°F" => UnitsNet.Temperature.FromDegreesFahrenheit(number),
            "°C" => UnitsNet.Temperature.FromDegreesCelsius(number),
            _ => Measured(key, QuantityText.Temperature, value => value.DegreesCelsius, PresetBounds.Temperature),
        };
    }

    /// <summary>A difference of temperatures.</summary>
    public TemperatureDelta Difference(string key)
    {
        bool isPlain = PlainFigure.Split(PlainText(key) ?? "", out double number, out string unit)
            && PresetBounds.Difference.Hold(number);
        return (isPlain ? unit : "") switch
        {
            "°C" => TemperatureDelta.FromDegreesCelsius(number),
            "°F" => TemperatureDelta.FromDegreesFahrenheit(number),
            _ => Measured(key, QuantityText.TemperatureDelta, value => value.Kelvins, PresetBounds.Difference),
        };
    }

    /// <summary>A share in percent.</summary>
    public Ratio Percent(string key, Bounds bounds)
    {
        if (PlainText(key) is { } text && PlainPercent(text, bounds) is { } share) return share;
        return Measured(key, QuantityText.Ratio, value => value.Percent, bounds);
    }

    /// <summary>A share in percent out of a part of a field's text.</summary>
    public Ratio PercentText(string key, string text, Bounds bounds) =>
        PlainPercent(text, bounds) ?? MeasuredText(key, text, QuantityText.Ratio, value => value.Percent, bounds);

    /// <summary>A density.</summary>
    public Density Density(string key)
    {
        bool isPlain = PlainFigure.Split(PlainText(key) ?? "", out double number, out string unit);
        const double KilogramsPerCubicMetre = 1_000;
        return (isPlain ? unit : "") switch
        {
            "kg/L" when PresetBounds.Density.Hold(number * KilogramsPerCubicMetre) => UnitsNet.Density.FromKilogramsPerLiter(number),
            "kg/m3" when PresetBounds.Density.Hold(number) => UnitsNet.Density.FromKilogramsPerCubicMeter(number),
            _ => Measured(key, QuantityText.Density, value => value.KilogramsPerCubicMeter, PresetBounds.Density),
        };
    }

    /// <summary>The plain text of a field, asked for; null: it is not there or is no text.</summary>
    public string? PlainText(string key) => Find(key)?.Node is TextNode node ? node.Text : null;

    /// <summary>A bare number within bounds, or null where it is not said.</summary>
    public double? NumberOrNull(string key, Bounds bounds) => Has(key) ? Number(key, bounds) : null;

    /// <summary>A whole number within bounds.</summary>
    public int Whole(string key, int least, int most)
    {
        var bounds = new Bounds(least, most);
        double value = Number(key, bounds);
        if (value == Math.Floor(value)) return (int)value;
        Say(key, Sentences.NotWhole(What(key), Text(key), bounds));
        return least;
    }

    /// <summary>A quantity within bounds.</summary>
    /// <param name="key">The field.</param>
    /// <param name="read">Reads its text.</param>
    /// <param name="figure">The quantity in the bounds' unit.</param>
    /// <param name="bounds">What it may be.</param>
    public T Measured<T>(string key, Func<string, QuantityReading<T>> read, Func<T, double> figure, Bounds bounds)
        where T : struct =>
        TextNode(key, bounds.ToString()) is { } node ? MeasuredText(key, node.Text, read, figure, bounds) : default;

    /// <summary>A quantity within bounds, or null where it is not said.</summary>
    public T? MeasuredOrNull<T>(string key, Func<string, QuantityReading<T>> read, Func<T, double> figure, Bounds bounds)
        where T : struct =>
        Has(key) ? Measured(key, read, figure, bounds) : null;

    /// <summary>A quantity out of a part of a field's text.</summary>
    public T MeasuredText<T>(string key, string text, Func<string, QuantityReading<T>> read, Func<T, double> figure, Bounds bounds)
        where T : struct
    {
        var reading = read(text);
        if (reading.Trouble is { } trouble) Say(key, Sentences.Quantity(What(key), trouble));
        else if (bounds.Hold(figure(reading.Value))) return reading.Value;
        else Say(key, Sentences.OutOfRange(What(key), text, bounds.ToString()));
        return default;
    }

    /// <summary>A number followed by the one unit that the field has, where everyday spellings are of no use.</summary>
    public double InUnit(string key, string unit, Bounds bounds)
    {
        if (TextNode(key, $"a figure in {unit}") is not { } node) return default;
        string text = node.Text;
        bool hasUnit = text.EndsWith(unit, StringComparison.Ordinal);
        if (!hasUnit)
        {
            Say(key, Sentences.WrongKind(What(key), $"`{text}`", $"a figure in `{unit}`"));
            return default;
        }

        return NumberText(key, text[..^unit.Length].TrimEnd(), bounds with { Unit = unit });
    }

    /// <summary>A bare number out of a part of a field's text.</summary>
    public double NumberText(string key, string text, Bounds bounds)
    {
        if (PlainFigure.Split(text, out double number, out string unit) && unit.Length == 0 && bounds.Hold(number)) return number;
        return MeasuredText(key, text, QuantityText.Number, value => value, bounds);
    }

    /// <summary>A number in the field's one unit, or nothing where it is not said.</summary>
    public double InUnitOr(string key, string unit, Bounds bounds, double none) => Has(key) ? InUnit(key, unit, bounds) : none;

    /// <summary>Which of a few words; the first where it is none of them.</summary>
    public int Choice(string key, params ReadOnlySpan<string> words)
    {
        if (TextNode(key, "one of " + string.Join(", ", words)) is not { } node) return 0;
        int place = words.IndexOf(node.Text);
        if (place >= 0) return place;
        Say(key, Sentences.UnknownWord($"`{key}` in {Where}", node.Text, words.ToArray(), null));
        return 0;
    }

    /// <summary>Which of a few words, or the first where it is not said.</summary>
    public int ChoiceOr(string key, params ReadOnlySpan<string> words) => Has(key) ? Choice(key, words) : 0;

    /// <summary>A list of texts, or a single text; empty where it is not said.</summary>
    public ImmutableArray<string> Words(string key) => [.. TextNodes(key).Select(node => node.Text)];

    /// <summary>A list of texts that are all rows of another table.</summary>
    public ImmutableArray<string> Words(string key, string table, IReadOnlyCollection<string> known)
    {
        var nodes = TextNodes(key);
        foreach (var node in nodes.Where(node => !known.Contains(node.Text)))
        {
            Find(key)!.Value.Layer.File.Problems.Add(node.Mark, Sentences.UnknownWord(table, node.Text, known, null));
        }

        return [.. nodes.Select(node => node.Text)];
    }

    /// <summary>A map of texts; its layers lie over each other. Empty where it is not said.</summary>
    public ImmutableDictionary<string, string> Texts(string key)
    {
        var texts = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var (name, node, layer) in Entries(key, merged: true))
        {
            if (node is TextNode { IsMissing: false, IsNull: false } text) texts[name.Text] = text.Text;
            else layer.File.Problems.Add(node.Mark, Sentences.WrongKind($"`{name.Text}` in `{key}` of {Where}", PresetFile.Kind(node), "text"));
        }

        return texts.ToImmutable();
    }

    /// <summary>A map inside the row, read as a row of its own; null where it is not said.</summary>
    public PresetRow? Row(string key)
    {
        asked.Add(key);
        var maps = ImmutableArray.CreateBuilder<PresetLayer>();
        foreach (var layer in layers)
        {
            if (layer.Map.Find(key) is not { } entry) continue;
            if (entry.Value is MapNode map) maps.Add(new(entry.Key, map, layer.File));
            else layer.File.Problems.Add(entry.Value.Mark, Sentences.WrongKind($"`{key}` in {Where}", PresetFile.Kind(entry.Value), "a map"));
        }

        return maps.Count == 0 ? null : new($"`{key}` of {Where}", maps.ToImmutable());
    }

    /// <summary>The rows of a map inside the row, in the order of the files.</summary>
    public ImmutableArray<PresetRow> Rows(string key)
    {
        if (Row(key) is not { } map) return [];
        return PresetTable.RowsOf($"{key} of {Where}", map.layers);
    }

    /// <summary>The items of a list inside the row that are maps.</summary>
    public ImmutableArray<PresetRow> Items(string key)
    {
        if (Find(key) is not { } field) return [];
        if (field.Node is not ListNode list)
        {
            Say(key, Sentences.WrongKind(What(key), PresetFile.Kind(field.Node), "a list"));
            return [];
        }

        var rows = ImmutableArray.CreateBuilder<PresetRow>();
        foreach (var item in list.Items)
        {
            if (item is MapNode map) rows.Add(new($"`{key}` of {Where}", [field.Layer with { Map = map }]));
            else field.Layer.File.Problems.Add(item.Mark, Sentences.WrongKind($"an entry of `{key}` in {Where}", PresetFile.Kind(item), "a map"));
        }

        return rows.ToImmutable();
    }

    /// <summary>The entries of a map inside the row.</summary>
    /// <param name="key">The field.</param>
    /// <param name="merged">Whether lower layers shine through; else the uppermost layer that has the key counts alone.</param>
    public ImmutableArray<PresetEntry> Entries(string key, bool merged)
    {
        asked.Add(key);
        var found = ImmutableArray.CreateBuilder<PresetEntry>();
        foreach (var layer in layers)
        {
            if (layer.Map.Find(key) is not { } entry) continue;
            if (!merged) found.Clear();
            if (entry.Value is MapNode map) AddAll(found, map, layer);
            else layer.File.Problems.Add(entry.Value.Mark, Sentences.WrongKind($"`{key}` in {Where}", PresetFile.Kind(entry.Value), "a map"));
        }

        return found.ToImmutable();
    }

    /// <summary>Where the row comes from; a user's change says its file, and is an estimate, unless it names a source.</summary>
    public Provenance Provenance()
    {
        asked.Add("source");
        asked.Add("status");
        var top = layers[^1];
        bool changed = layers.Length > 1 && (top.Map.Find("source") is null || top.Map.Find("status") is null);
        if (changed)
        {
            var below = new PresetRow(Where, layers[..^1]).Provenance();
            string source = top.Map.Find("source") is null ? $"{below.Source}; changed in {top.File.Name}" : SourceOf(top);
            Status status = top.Map.Find("status") is null ? Weaker(below.Status, Status.Estimate) : StatusOf("status");
            return new(source, status);
        }

        return new(SourceOf(top), StatusOf("status"));
    }

    /// <summary>A status word as a part of a field's text.</summary>
    public Status StatusText(string key, string text)
    {
        int place = text == SecondHand ? (int)Status.SecondHand : Array.IndexOf(Statuses, text);
        if (place >= 0) return (Status)place;
        Say(key, Sentences.UnknownWord($"status in {Where}", text, Statuses, null));
        return Status.FromMemory;
    }

    /// <summary>Each file's layer as a row of its own, built-in first.</summary>
    public IEnumerable<PresetRow> EachLayer() => layers.Select(layer => new PresetRow(Where, [layer]));

    /// <summary>Whether the uppermost layer is the user's.</summary>
    public bool IsOverride => layers[^1].File.IsOverride;

    /// <summary>The file of the uppermost layer.</summary>
    public string FileName => layers[^1].File.Name;

    /// <summary>Notes a problem at a field, or at the row where the field is not there.</summary>
    public void Say(string key, Problem problem)
    {
        if (Find(key) is { } field) field.Layer.File.Problems.Add(field.Node.Mark, problem);
        else layers[0].File.Problems.Add(layers[0].Key.Mark, problem);
    }

    /// <summary>Says which keys nobody asked for.</summary>
    public void Finish()
    {
        foreach (var layer in layers)
        {
            foreach (var entry in layer.Map.Entries.Where(entry => !asked.Contains(entry.Key.Text)))
            {
                layer.File.Problems.Add(entry.Key.Mark, Sentences.UnknownKey(entry.Key.Text, Where, asked.Distinct()));
            }
        }
    }

    private static void AddAll(ImmutableArray<PresetEntry>.Builder entries, MapNode map, PresetLayer layer)
    {
        foreach (var entry in map.Entries) entries.Add(new(entry.Key, entry.Value, layer));
    }

    private static Ratio? PlainPercent(string text, Bounds bounds) =>
        PlainFigure.Split(text, out double number, out string unit) && unit == "%" && bounds.Hold(number) ? Ratio.FromPercent(number) : null;

    private static Status Weaker(Status a, Status b) => a > b ? a : b;

    private string SourceOf(PresetLayer layer)
    {
        if (layer.Map.Find("source")?.Value is TextNode { IsMissing: false } text) return layer.File.Sources.GetValueOrDefault(text.Text, text.Text);
        layer.File.Problems.Add(layer.Key.Mark, Sentences.MissingKey("source", Where, "where the figures are from"));
        return "";
    }

    private Status StatusOf(string key) => TextNode(key, "a status such as `estimate`") is { } node ? StatusText(key, node.Text) : Status.FromMemory;

    private string What(string key) => $"`{key}` in {Where}";

    private (Node Node, PresetLayer Layer)? Find(string key)
    {
        if (!asked.Contains(key)) asked.Add(key);
        for (int i = layers.Length - 1; i >= 0; i--)
        {
            if (layers[i].Map.Find(key) is { } entry) return (entry.Value, layers[i]);
        }

        return null;
    }

    private TextNode? TextNode(string key, string expected)
    {
        if (Find(key) is not { } field)
        {
            Say(key, Sentences.MissingKey(key, Where, ""));
            return null;
        }

        if (field.Node is TextNode { IsMissing: false, IsNull: false } text) return text;
        Say(key, Sentences.WrongKind(What(key), PresetFile.Kind(field.Node), expected));
        return null;
    }

    private ImmutableArray<TextNode> TextNodes(string key)
    {
        if (Find(key) is not { } field) return [];
        if (field.Node is TextNode { IsMissing: false, IsNull: false } single) return [single];
        if (field.Node is not ListNode list)
        {
            Say(key, Sentences.WrongKind(What(key), PresetFile.Kind(field.Node), "a list"));
            return [];
        }

        var texts = ImmutableArray.CreateBuilder<TextNode>(list.Items.Length);
        foreach (var item in list.Items)
        {
            if (item is TextNode { IsMissing: false, IsNull: false } text) texts.Add(text);
            else field.Layer.File.Problems.Add(item.Mark, Sentences.WrongKind($"an entry of `{key}` in {Where}", PresetFile.Kind(item), "text"));
        }

        return texts.ToImmutable();
    }
}
