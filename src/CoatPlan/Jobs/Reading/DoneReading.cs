using CoatPlan.Problems;
using Mark = CoatPlan.Problems.Mark;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads <c>done</c>.</summary>
internal static class DoneReading
{
    /// <summary>Reads the entries in the order of the file.</summary>
    /// <param name="job">The job.</param>
    /// <param name="surfaces">The surfaces that an entry may name.</param>
    /// <param name="systems">The systems, whose layers an entry may name.</param>
    /// <param name="products">The products of their layers, whose labels bound the coats.</param>
    /// <param name="asOf">Now; nothing is done later.</param>
    public static ImmutableArray<DoneEntry> Read(
        MapReading job, ImmutableArray<JobSurface> surfaces, ImmutableArray<PaintSystem> systems, ImmutableArray<JobProduct> products, LocalDateTime? asOf)
    {
        var systemOf = surfaces.DistinctBy(surface => surface.Id).ToDictionary(surface => surface.Id, surface => surface.System, StringComparer.Ordinal);
        var mostOf = products.DistinctBy(product => product.Key)
            .ToDictionary(product => product.Key, product => MostCoats(product, job.Context.Vocabulary), StringComparer.Ordinal);
        var layersOf = systems.DistinctBy(system => system.Key)
            .ToDictionary(system => system.Key, system => system.Layers.Select(layer => MostCoats(layer, mostOf)).ToImmutableArray(), StringComparer.Ordinal);
        var entries = job.Maps("done").Select(map => (Map: map, Entry: Entry(map, systemOf, layersOf, asOf))).ToImmutableArray();
        CheckOrder(entries);
        return [.. entries.Select(read => read.Entry)];
    }

    private static int? MostCoats(JobProduct product, Vocabulary vocabulary) =>
        product.Label.Coats?.Most ?? (product.Preset is { } preset && vocabulary.MostCoats.TryGetValue(preset, out int most) ? most : null);

    // What hides the old colour may take more coats than the system asks, up to the label's most. Null: any number.
    private static int? MostCoats(PaintLayer layer, Dictionary<string, int?> mostOf) =>
        mostOf.GetValueOrDefault(layer.Product) is { } most ? Math.Max(most, layer.Coats ?? 0) : null;

    // A coat lies on those before it: of one that is told twice the first time counts.
    private static void CheckOrder(ImmutableArray<(MapReading Map, DoneEntry Entry)> entries)
    {
        var told = new HashSet<Mark>();
        var coats = entries.Where(read => read.Entry is { Layer: not null, Coat: not null, At: not null });
        foreach (var surface in coats.SelectMany(read => read.Entry.Surfaces, (read, id) => (Id: id, read.Map, read.Entry)).GroupBy(read => read.Id, StringComparer.Ordinal))
        {
            DoneEntry? latest = null;
            foreach (var coat in surface.GroupBy(read => (Layer: read.Entry.Layer!.Value, Coat: read.Entry.Coat!.Value)).OrderBy(coat => coat.Key))
            {
                foreach (var (_, map, entry) in coat)
                {
                    if (entry.At < latest?.At && told.Add(map.Mark))
                        map.Note("at", Sentences.Order("`at`", map.Tried("at"), EndOf(latest, surface.Key)));
                }

                var first = coat.MinBy(read => read.Entry.At).Entry;
                if (latest is null || first.At > latest.At) latest = first;
            }
        }
    }

    private static string EndOf(DoneEntry coat, string surface) =>
        FormattableString.Invariant($"no earlier than {coat.At:uuuu-MM-dd HH:mm}, the end of coat {coat.Coat} of layer {coat.Layer} below it on `{surface}`");

    private static DoneEntry Entry(
        MapReading map, Dictionary<string, string> systemOf, Dictionary<string, ImmutableArray<int?>> layersOf, LocalDateTime? asOf)
    {
        if (map.Has("surface") && map.Has("surfaces")) map.Note("surfaces", Sentences.NotBeside("surface", "surfaces", map.What));
        var ids = Ids(map, "surface", systemOf).AddRange(Ids(map, "surfaces", systemOf));
        string? operation = map.Word("operation");
        int? layer = map.Whole("layer");
        int? coat = map.Whole("coat");
        CheckWhat(map, operation);
        if (layer is { } number) CheckLayer(map, number, coat, ids, systemOf, layersOf);
        var at = map.Time("at");
        if (at > asOf) map.Note("at", Sentences.Order("`at`", map.Tried("at"), "no later than `as-of`"));
        return new()
        {
            Surfaces = ids,
            Operation = map.Has("layer") ? null : operation,
            Layer = layer,
            Coat = coat,
            At = at,
            Took = map.Duration("took"),
            Cans = map.Find("cans") is { } cans ? AmountReading.Read(cans, "`cans`", map.Context) : null,
            Readings = Readings(map.Map("readings")),
            Note = map.Text("note"),
            Mark = map.Mark,
        };
    }

    // An operation, or a layer and a coat; "operation: coat" may stand beside the latter, it says the same.
    private static void CheckWhat(MapReading map, string? operation)
    {
        bool hasCoat = map.Has("layer") || map.Has("coat");
        if (!map.Has("operation") && !hasCoat) map.Context.Problems.Add(map.Mark, Sentences.OneOf(map.What, ["operation", "layer"], []));
        if (operation is not (null or "coat") && hasCoat) map.Note("operation", Sentences.NotBeside("operation", map.Has("layer") ? "layer" : "coat", map.What));
        if (map.Has("layer") && !map.Has("coat")) map.Context.Problems.Add(map.Mark, Sentences.Needed(map.What, "coat", "as `layer` is there"));
        if (map.Has("coat") && !map.Has("layer")) map.Context.Problems.Add(map.Mark, Sentences.Needed(map.What, "layer", "as `coat` is there"));
        if (hasCoat && !map.Has("surface") && !map.Has("surfaces")) map.Context.Problems.Add(map.Mark, Sentences.Needed(map.What, "surface", "as `layer` is there"));
    }

    private static void CheckLayer(
        MapReading map, int layer, int? coat, ImmutableArray<string> ids, Dictionary<string, string> systemOf, Dictionary<string, ImmutableArray<int?>> layersOf)
    {
        string[] systems = [.. ids.Select(id => systemOf[id]).Where(key => layersOf.GetValueOrDefault(key) is { IsDefaultOrEmpty: false })];
        if (systems.FirstOrDefault(key => layersOf[key].Length < layer) is { } tooShort)
        {
            map.Note("layer", Sentences.OutOfRange("`layer`", map.Tried("layer"), FormattableString.Invariant($"1 to {layersOf[tooShort].Length}, the layers of `{tooShort}`")));
            return;
        }

        if (systems.FirstOrDefault(key => coat > layersOf[key][layer - 1]) is { } tooThin)
        {
            map.Note("coat", Sentences.OutOfRange("`coat`", map.Tried("coat"), FormattableString.Invariant(
                $"0 to {layersOf[tooThin][layer - 1]}, the most that layer {layer} of `{tooThin}` takes unless its `coats` asks for more")));
        }
    }

    private static ImmutableArray<string> Ids(MapReading map, string key, Dictionary<string, string> systemOf)
    {
        if (map.Find(key) is not { } node) return [];
        var ids = ImmutableArray.CreateBuilder<string>();
        foreach (var item in Values.OneOrItems(node))
        {
            if (Values.Text(item, "an id of a surface", map.Context) is not { } text) continue;
            string id = systemOf.ContainsKey(text) ? text : JobWords.IdOf(text); // a person may write the name from which the id follows
            if (systemOf.ContainsKey(id)) ids.Add(id);
            else if (!map.Context.Problems.IsFull) map.Context.Problems.Add(item.Mark, Sentences.UnknownName("surface", text, systemOf.Keys));
        }

        return [.. ids.Distinct()];
    }

    private static DoneReadings? Readings(MapReading? readings) => readings is null ? null : new()
    {
        Air = readings.Temperature("air"),
        Metal = readings.Temperature("metal"),
        Humidity = readings.Ratio("humidity"),
        Film = readings.Length("film"),
    };
}
