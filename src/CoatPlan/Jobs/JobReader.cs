using CoatPlan.Jobs.Reading;
using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>Reads job files.</summary>
public static class JobReader
{
    /// <summary>Reads a job file: every mistake in it is found in one go.</summary>
    /// <param name="document">The file.</param>
    /// <param name="fileName">The name of the file, as problems shall call it.</param>
    /// <param name="vocabulary">The known words.</param>
    /// <returns>The job, or its problems; no text makes it throw.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static JobReading Read(JobDocument document, string fileName, Vocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(fileName);
        ArgumentNullException.ThrowIfNull(vocabulary);
        var problems = new ProblemList(fileName);
        problems.Add(document.Problems);
        var root = document.Root;
        bool isEmpty = root is null or TextNode { IsMissing: true } or TextNode { IsNull: true };
        if (isEmpty && problems.Count == 0) problems.Add(default, Sentences.EmptyFile("a job, beginning with `coatplan: 1`"));
        var job = isEmpty ? null : Job(MapReading.Of(root, JobKeys.Job, new(problems, vocabulary)));
        return problems.Count == 0
            ? new(job, []) { Sections = JobSections.Of(document), Weather = job!.Place.Weather }
            : new(null, problems.InOrder()) { Weather = job?.Place?.Weather };
    }

    /// <summary>Reads a job file from its bytes: what is no text is a problem too.</summary>
    /// <param name="bytes">The bytes, all of them or the first <see cref="JobText.MostBytes"/> + 1.</param>
    /// <param name="fileName">The name of the file, as problems shall call it.</param>
    /// <param name="vocabulary">The known words.</param>
    /// <returns>The job, or its problems; no bytes make it throw.</returns>
    public static JobReading Read(ReadOnlySpan<byte> bytes, string fileName, Vocabulary vocabulary)
    {
        var text = JobText.FromBytes(bytes, fileName);
        return text.Problems.IsEmpty ? Read(text.Text, fileName, vocabulary) : new(null, text.Problems);
    }

    private static Job? Job(MapReading? map)
    {
        if (map is null) return null;
        map.Whole("coatplan");
        var start = map.Time("start");
        var finishBy = map.Time("finish-by");
        var asOf = map.Time("as-of");
        if (finishBy <= start) map.Note("finish-by", Sentences.Order("`finish-by`", map.Tried("finish-by"), $"later than the start, `{map.Tried("start")}`"));
        var place = PlaceReading.Read(map.Map("place"));
        var crew = Crew(map.Map("crew"));
        var products = Products(map);
        var productKeys = map.Entries("products").Select(entry => entry.Key.Text).ToHashSet(StringComparer.Ordinal);
        var systems = SystemReading.Read(map, productKeys);
        var systemKeys = map.Entries("systems").Select(entry => entry.Key.Text).ToHashSet(StringComparer.Ordinal);
        var surfaces = SurfaceReading.Read(map, systemKeys);
        var job = new Job
        {
            Name = map.Text("job") ?? "",
            Notes = map.Text("notes") ?? "",
            Units = map.Word<PrintUnits>("units") ?? PrintUnits.Us,
            Start = start ?? default,
            FinishBy = finishBy,
            AsOf = asOf,
            Reserve = map.Ratio("reserve") ?? JobDefaults.Reserve,
            TapeLimit = map.Duration("tape-limit") ?? JobDefaults.TapeLimit,
            Built = map.Whole("built"),
            Place = place!,
            Crew = crew!,
            Products = products,
            Systems = systems,
            Surfaces = surfaces,
            Have = ShelfReading.Have(map, productKeys),
            TestPanels = PanelReading.Read(map, productKeys),
            Prices = ShelfReading.Prices(map.Map("prices")),
            Checks = ShelfReading.Checks(map.Map("checks")),
            Done = DoneReading.Read(map, surfaces, systems, products, asOf),
        };
        return job;
    }

    private static Crew? Crew(MapReading? crew)
    {
        if (crew is null) return null;
        return new()
        {
            People = crew.Whole("people") ?? 1,
            Stations = crew.Whole("stations") ?? JobDefaults.Stations,
            Hours = HoursReading.Read(crew),
            SetUp = crew.Duration("set-up") ?? Duration.Zero,
            PutAway = crew.Duration("put-away") ?? Duration.Zero,
            Mark = crew.Mark,
        };
    }

    private static ImmutableArray<JobProduct> Products(MapReading job)
    {
        var products = ImmutableArray.CreateBuilder<JobProduct>();
        foreach (var entry in job.Entries("products"))
        {
            if (MapReading.Of(entry.Value, JobKeys.Product, job.Context) is not { } map) continue;
            string? preset = map.Word("preset");
            if (!map.Has("preset")) CheckWithoutPreset(map, entry);
            products.Add(new() { Key = entry.Key.Text, Preset = preset, Label = LabelReading.Read(map), Mark = entry.Key.Mark });
        }

        return products.ToImmutable();
    }

    private static void CheckWithoutPreset(MapReading map, MapEntry entry)
    {
        string where = $"the product `{entry.Key.Text}`";
        if (!map.Has("covers") && !map.Has("solids")) map.Context.Problems.Add(entry.Key.Mark, Sentences.Needed(where, "covers` or `solids", "as no preset fills it"));
        foreach (string key in (ReadOnlySpan<string>)["times", "recoat", "limits"])
        {
            if (!map.Has(key)) map.Context.Problems.Add(entry.Key.Mark, Sentences.Needed(where, key, "as no preset fills it"));
        }
    }
}
