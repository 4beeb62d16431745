using CoatPlan.Problems;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads <c>done</c>.</summary>
internal static class DoneReading
{
    /// <summary>Reads the entries in the order of the file.</summary>
    /// <param name="job">The job.</param>
    /// <param name="surfaces">The surfaces that an entry may name.</param>
    /// <param name="systems">The systems, whose layers an entry may name.</param>
    /// <param name="asOf">Now; nothing is done later.</param>
    public static ImmutableArray<DoneEntry> Read(
        MapReading job, ImmutableArray<JobSurface> surfaces, ImmutableArray<PaintSystem> systems, LocalDateTime? asOf)
    {
        var systemOf = surfaces.DistinctBy(surface => surface.Id).ToDictionary(surface => surface.Id, surface => surface.System, StringComparer.Ordinal);
        var layersOf = systems.ToDictionary(system => system.Key, system => system.Layers.Length, StringComparer.Ordinal);
        return [.. job.Maps("done").Select(map => Entry(map, systemOf, layersOf, asOf))];
    }

    private static DoneEntry Entry(MapReading map, Dictionary<string, string> systemOf, Dictionary<string, int> layersOf, LocalDateTime? asOf)
    {
        if (map.Has("surface") && map.Has("surfaces")) map.Note("surfaces", Sentences.NotBeside("surface", "surfaces", map.What));
        var ids = Ids(map, "surface", systemOf).AddRange(Ids(map, "surfaces", systemOf));
        string? operation = map.Word("operation");
        int? layer = map.Whole("layer");
        int? coat = map.Whole("coat");
        CheckWhat(map, operation);
        if (layer is { } number) CheckLayer(map, number, ids, systemOf, layersOf);
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
        MapReading map, int layer, ImmutableArray<string> ids, Dictionary<string, string> systemOf, Dictionary<string, int> layersOf)
    {
        string? tooShort = ids.Select(id => systemOf[id]).FirstOrDefault(key => layersOf.GetValueOrDefault(key) is > 0 and var layers && layers < layer);
        if (tooShort is null) return;
        map.Note("layer", Sentences.OutOfRange("`layer`", map.Tried("layer"), FormattableString.Invariant($"1 to {layersOf[tooShort]}, the layers of `{tooShort}`")));
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
