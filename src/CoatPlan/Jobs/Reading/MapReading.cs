using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;
using CoatPlan.Quantities;
using UnitsNet;
using Mark = CoatPlan.Problems.Mark;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads the values of one map by its table of keys: unknown and missing keys are noted at once, values as they are asked for.</summary>
/// <remarks>A key that is absent, or says <c>null</c> where it may be absent, reads as null; so does one with a problem.</remarks>
internal sealed class MapReading
{
    private readonly MapNode map;
    private readonly KeyTable table;

    private MapReading(MapNode map, KeyTable table, ReadingContext context)
    {
        this.map = map;
        this.table = table;
        Context = context;
    }

    /// <summary>Where problems go, and the known words.</summary>
    public ReadingContext Context { get; }

    /// <summary>Where the map stands.</summary>
    public Mark Mark => map.Mark;

    /// <summary>What the map is, in words.</summary>
    public string What => table.What;

    /// <summary>Begins to read a map.</summary>
    /// <param name="node">What stands where a map is due.</param>
    /// <param name="table">The keys it may have.</param>
    /// <param name="context">Takes problems.</param>
    /// <returns>Null: no map stands there, which is noted.</returns>
    public static MapReading? Of(Node? node, KeyTable table, ReadingContext context)
    {
        if (node is null) return null;
        if (node is not MapNode map)
        {
            context.Problems.Add(node.Mark, Sentences.WrongKind(table.What, Values.Kind(node), "a map of keys such as `" + table.Keys[0].Name + ":`"));
            return null;
        }

        var reading = new MapReading(map, table, context);
        reading.CheckKeys();
        return reading;
    }

    // A required key that was misspelt is told once, as the unknown key that it is.
    private void CheckKeys()
    {
        var misspelt = new HashSet<string>(StringComparer.Ordinal);
        foreach (var entry in map.Entries)
        {
            if (Context.Problems.IsFull) return;
            if (table.Find(entry.Key.Text) is not null) continue;
            if (table.Inside.Contains(entry.Key.Text) && table.Keys.FirstOrDefault(key => map.Find(key.Name) is not null) is { } beside)
            {
                Context.Problems.Add(entry.Key.Mark, Sentences.KeyOutside(entry.Key.Text, beside.Name));
                continue;
            }

            var free = table.Keys.Select(key => key.Name).Where(name => map.Find(name) is null);
            string? meant = Nearest.To(JobWords.Fold(entry.Key.Text).Replace(' ', '-'), free);
            if (meant is not null) misspelt.Add(meant);
            Context.Problems.Add(entry.Key.Mark, Sentences.UnknownKey(entry.Key.Text, table.What, table.Keys.Select(key => key.Name), meant));
        }

        foreach (var key in table.Keys)
        {
            if (!key.IsRequired || misspelt.Contains(key.Name) || map.Find(key.Name) is not null) continue;
            Context.Problems.Add(Mark, Sentences.MissingKey(key.Name, table.What, key.Form.Example));
        }
    }

    /// <summary>Whether a key is there and says something.</summary>
    public bool Has(string key) => Find(key) is not null;

    /// <summary>Where the value of a key stands, or the map where it is absent.</summary>
    public Mark MarkOf(string key) => map.Find(key)?.Value.Mark ?? Mark;

    /// <summary>The text of a value as it was written, for a problem.</summary>
    public string Tried(string key) => (Find(key) as TextNode)?.Text ?? "";

    /// <summary>Notes a problem at the value of a key.</summary>
    public void Note(string key, Problem problem) => Context.Problems.Add(MarkOf(key), problem);

    /// <summary>The value of a key; null: absent.</summary>
    public Node? Find(string key)
    {
        var spec = Spec(key);
        if (map.Find(key) is not { } entry) return null;
        if (entry.Value is not TextNode text || (!text.IsMissing && !text.IsNull)) return entry.Value;
        if (text.IsNull && !spec.IsRequired) return null;
        return entry.Value;
    }

    /// <summary>The map under a key.</summary>
    public MapReading? Map(string key) => Of(Find(key), ((MapForm)Spec(key).Form).Table(), Context);

    /// <summary>The maps in the list under a key; a list that is empty is noted unless it may be.</summary>
    public ImmutableArray<MapReading> Maps(string key)
    {
        var form = (ListForm)Spec(key).Form;
        var due = $"a list of maps";
        if (Find(key) is not { } node) return [];
        var items = Values.Items(node, Named(key), due, Context);
        if (node is ListNode && items.Length < form.Least) Note(key, Sentences.EmptyList(Named(key), "one entry or more"));
        var mapForm = (MapForm)form.Item;
        return [.. items.Select(item => Of(item, mapForm.Table(), Context)).OfType<MapReading>()];
    }

    /// <summary>The keys that the person chose, and their values.</summary>
    public ImmutableArray<MapEntry> Entries(string key)
    {
        if (Find(key) is not { } node) return [];
        if (node is MapNode entries)
        {
            if (entries.Entries.IsEmpty && Spec(key).IsRequired) Note(key, Sentences.EmptyList(Named(key), "one entry or more"));
            return entries.Entries;
        }

        Note(key, Sentences.WrongKind(Named(key), Values.Kind(node), "a map"));
        return [];
    }

    /// <summary>A text; one in quotes with nothing in it counts as absent where it may be.</summary>
    public string? Text(string key)
    {
        if (Find(key) is not { } node) return null;
        bool saysNothing = node is TextNode { IsPlain: false } text && string.IsNullOrWhiteSpace(text.Text) && !Spec(key).IsRequired;
        return saysNothing ? null : Values.Text(node, Named(key), Context);
    }

    public bool? Flag(string key) => Find(key) is { } node ? Values.Flag(node, Named(key), Context) : null;

    public int? Whole(string key) =>
        Find(key) is { } node ? Values.Whole(node, Named(key), ((WholeForm)Spec(key).Form).Bounds, Context) : null;

    public LocalDateTime? Time(string key) => Find(key) is { } node ? Values.Time(node, Named(key), Context) : null;

    public string? Word(string key) => Find(key) is { } node ? Values.Word(node, (WordForm)Spec(key).Form, Context) : null;

    public T? Word<T>(string key)
        where T : struct, Enum
    {
        if (Word(key) is not { } word) return null;
        return Enum.GetValues<T>().First(value => JobWords.Write(value) == word);
    }

    /// <summary>The words in a list, or the single word in its place; each once.</summary>
    public ImmutableArray<string> WordList(string key)
    {
        if (Find(key) is not { } node) return [];
        var form = (WordForm)((OneOrListForm)Spec(key).Form).Item;
        return [.. Values.OneOrItems(node).Select(item => Values.Word(item, form, Context)).OfType<string>().Distinct()];
    }

    /// <summary>The texts in a list, or the single text in its place.</summary>
    public ImmutableArray<string> TextList(string key)
    {
        if (Find(key) is not { } node) return [];
        return [.. Values.OneOrItems(node).Select(item => Values.Text(item, "an entry of " + Named(key), Context)).OfType<string>()];
    }

    public double? Number(string key) => Find(key) is { } node
        ? Values.Quantity(node, Named(key), QuantityText.Number, v => v, ((NumberForm)Spec(key).Form).Bounds, Dimension.None, Context)
        : null;

    public decimal? Money(string key) => Find(key) is { } node
        ? Values.Quantity(node, Named(key), QuantityText.Money, v => (double)v, JobRanges.Money, Dimension.None, Context)
        : null;

    public decimal? MoneyPerHour(string key) => Quantity(key, QuantityText.MoneyPerHour, v => (double)v);

    public Length? Length(string key) => Quantity(key, QuantityText.Length, v => v.Meters);

    public Area? Area(string key) => Quantity(key, QuantityText.Area, v => v.SquareMeters);

    public Volume? Volume(string key) => Quantity(key, QuantityText.Volume, v => v.CubicMeters);

    public Temperature? Temperature(string key) => Quantity(key, QuantityText.Temperature, v => v.DegreesCelsius);

    public TemperatureDelta? TemperatureDelta(string key) => Quantity(key, QuantityText.TemperatureDelta, v => v.DegreesCelsius);

    public Duration? Duration(string key) => Quantity(key, QuantityText.Duration, v => v.TotalDays);

    public Ratio? Ratio(string key) => Quantity(key, QuantityText.Ratio, v => v.Percent);

    public VolumeFlow? Flow(string key) => Quantity(key, QuantityText.Flow, v => v.CubicMetersPerMinute);

    public Density? Density(string key) => Quantity(key, QuantityText.Density, v => v.KilogramsPerLiter);

    public Pressure? Pressure(string key) => Quantity(key, QuantityText.Pressure, v => v.Kilopascals);

    public Angle? Angle(string key) => Quantity(key, QuantityText.Angle, v => v.Degrees);

    public QuantityRange<Temperature>? TemperatureRange(string key) => Find(key) is { } node
        ? Values.Range(node, Named(key), QuantityText.TemperatureRange, v => v.DegreesCelsius, (RangeForm)Spec(key).Form, Context)
        : null;

    public QuantityRange<Ratio>? RatioRange(string key) => Find(key) is { } node
        ? Values.Range(node, Named(key), QuantityText.RatioRange, v => v.Percent, (RangeForm)Spec(key).Form, Context)
        : null;

    /// <summary>The key of a group of which exactly one must be there; otherwise null, which is noted.</summary>
    public string? OneOf(params ReadOnlySpan<string> keys)
    {
        string[] all = keys.ToArray();
        string[] there = [.. all.Where(Has)];
        if (there.Length == 1) return there[0];
        var mark = there.Length > 1 ? MarkOf(there[1]) : Mark;
        Context.Problems.Add(mark, Sentences.OneOf(What, all, there));
        return null;
    }

    /// <summary>A key in words, for a problem.</summary>
    public static string Named(string key) => $"`{key}`";

    private T? Quantity<T>(string key, Func<string, QuantityReading<T>> read, Func<T, double> inUnit)
        where T : struct
    {
        if (Find(key) is not { } node) return null;
        var form = (QuantityForm)Spec(key).Form;
        return Values.Quantity(node, Named(key), read, inUnit, form.Bounds, form.Dimension, Context);
    }

    private KeySpec Spec(string key) =>
        table.Find(key) ?? throw new ArgumentException($"{table.What} has no key {key}.", nameof(key));
}
