using CoatPlan.Problems;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads <c>surfaces</c> and gives each its id.</summary>
internal static class SurfaceReading
{
    /// <summary>Reads the surfaces in the order of the file.</summary>
    /// <param name="job">The job.</param>
    /// <param name="systems">Keys of the systems that a surface may name.</param>
    public static ImmutableArray<JobSurface> Read(MapReading job, IReadOnlySet<string> systems)
    {
        var maps = job.Maps("surfaces");
        var taken = new Dictionary<string, Mark>(StringComparer.Ordinal);
        foreach (var map in maps)
        {
            if (map.Text("id") is not { } id || taken.TryAdd(id, map.MarkOf("id"))) continue;
            map.Note("id", Sentences.RepeatedName("id", id, taken[id]));
        }

        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        return [.. maps.Select(map => Surface(map, systems, name => Id(name, taken, numbers, map.Mark)))];
    }

    private static JobSurface Surface(MapReading map, IReadOnlySet<string> systems, Func<string, string> idOf)
    {
        string name = map.Text("name") ?? "";
        string? system = map.Text("system");
        if (system is not null && !systems.Contains(system) && !map.Context.Problems.IsFull) map.Note("system", Sentences.UnknownName("system", system, systems));
        var conditions = map.WordList("condition");
        if (map.Find("condition") is Yaml.ListNode { Items.IsEmpty: true }) map.Note("condition", Sentences.EmptyList("`condition`", "one condition or more, such as `sound`"));
        var area = map.Area("area");
        var shapes = map.Find("shape") is { } node ? ShapeReading.ReadAll(node, "`shape`", map.Context) : [];
        map.OneOf("area", "shape");
        return new()
        {
            Id = map.Text("id") ?? idOf(name),
            Name = name,
            Count = map.Whole("count") ?? 1,
            Material = map.Word("material") ?? "",
            Finish = map.Word("finish") ?? JobDefaults.Finish,
            Conditions = conditions.IsEmpty ? JobDefaults.Conditions : conditions,
            Area = area,
            Shapes = shapes,
            Spread = map.Ratio("spread") ?? (map.Has("shape") ? JobDefaults.SpreadOfShape : JobDefaults.SpreadOfFigure),
            Relief = map.Number("relief"),
            Form = map.Word("form") ?? JobDefaults.Form,
            Gauge = map.Length("gauge"),
            Stays = map.Flag("stays") ?? false,
            Faces = map.Word<FaceDirection>("faces") ?? FaceDirection.Mixed,
            Heat = map.Temperature("heat"),
            Lightness = LightnessReading.Read(map),
            BareShare = map.Ratio("bare-share"),
            LeadTest = map.Word<LeadTestResult>("lead-test"),
            Near = map.WordList("near"),
            System = system ?? "",
            Masks = [.. map.Maps("mask").Select(Mask)],
            Mark = map.Mark,
        };
    }

    private static MaskItem Mask(MapReading map) => new()
    {
        What = map.Text("what") ?? "",
        Kind = map.Word("kind"),
        Edge = map.Length("edge"),
        Area = map.Area("area"),
        Mark = map.Mark,
    };

    // Goes on counting where the same name last stopped: a thousand brackets are numbered in a thousand steps.
    private static string Id(string name, Dictionary<string, Mark> taken, Dictionary<string, int> numbers, Mark mark)
    {
        string id = JobWords.IdOf(name);
        for (int number = numbers.GetValueOrDefault(id) + 1; ; number++)
        {
            numbers[id] = number;
            string numbered = number == 1 ? id : FormattableString.Invariant($"{id}-{number}");
            if (taken.TryAdd(numbered, mark)) return numbered;
        }
    }
}
