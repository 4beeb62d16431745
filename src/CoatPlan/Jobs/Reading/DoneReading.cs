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
        MapReading job, ImmutableArray<JobSurface> surfaces, ImmutableArray<PaintSystem> systems, LocalDateTime? asOf) =>
        [.. job.Maps("done").Select(map => Entry(map, surfaces, systems, asOf))];

    private static DoneEntry Entry(MapReading map, ImmutableArray<JobSurface> surfaces, ImmutableArray<PaintSystem> systems, LocalDateTime? asOf)
    {
        if (map.Has("surface") && map.Has("surfaces")) map.Note("surfaces", Sentences.NotBeside("surface", "surfaces", map.What));
        var ids = Ids(map, "surface", surfaces).AddRange(Ids(map, "surfaces", surfaces));
        string? operation = map.Word("operation");
        int? layer = map.Whole("layer");
        int? coat = map.Whole("coat");
        CheckWhat(map, operation);
        if (layer is { } number) CheckLayer(map, number, ids, surfaces, systems);
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
        MapReading map, int layer, ImmutableArray<string> ids, ImmutableArray<JobSurface> surfaces, ImmutableArray<PaintSystem> systems)
    {
        var keys = surfaces.Where(surface => ids.Contains(surface.Id)).Select(surface => surface.System);
        var tooShort = systems.FirstOrDefault(system => keys.Contains(system.Key) && system.Layers.Length is > 0 and var layers && layers < layer);
        if (tooShort is null) return;
        map.Note("layer", Sentences.OutOfRange("`layer`", map.Tried("layer"), FormattableString.Invariant($"1 to {tooShort.Layers.Length}, the layers of `{tooShort.Key}`")));
    }

    private static ImmutableArray<string> Ids(MapReading map, string key, ImmutableArray<JobSurface> surfaces)
    {
        if (map.Find(key) is not { } node) return [];
        var ids = ImmutableArray.CreateBuilder<string>();
        foreach (var item in Values.OneOrItems(node))
        {
            if (Values.Text(item, "an id of a surface", map.Context) is not { } text) continue;
            string? id = Known(text, surfaces);
            if (id is not null) ids.Add(id);
            else map.Context.Problems.Add(item.Mark, Sentences.UnknownName("surface", text, surfaces.Select(surface => surface.Id)));
        }

        return [.. ids.Distinct()];
    }

    // A person may write the name where the id follows from it.
    private static string? Known(string text, ImmutableArray<JobSurface> surfaces)
    {
        string slug = JobWords.IdOf(text);
        return (surfaces.FirstOrDefault(surface => surface.Id == text) ?? surfaces.FirstOrDefault(surface => surface.Id == slug))?.Id;
    }

    private static DoneReadings? Readings(MapReading? readings) => readings is null ? null : new()
    {
        Air = readings.Temperature("air"),
        Metal = readings.Temperature("metal"),
        Humidity = readings.Ratio("humidity"),
        Film = readings.Length("film"),
    };
}
