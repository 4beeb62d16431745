using System.Text.Json;
using CoatPlan.Explanations;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Explanations;

/// <summary>Whatever number or moment stands in a plan's JSON can be asked for by its place there, and is explained by the very same value.</summary>
public sealed class EveryFigureOfAPlan
{
    /// <summary>The format of the file is no figure of the job; what was asked for, and the words of steps, are given.</summary>
    private static readonly string[] Given = ["coatplan", "start", "finishBy"];

    public static TheoryData<string> Files =>
        [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "presets", "jobs"), "*.job.yaml").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_figure_of_an_example_is_explained(string file)
    {
        var (plan, workings) = Planner.Work(Ready(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "presets", "jobs", file))), SearchDepth.Quick);

        Unexplained(plan, workings).ShouldBeEmpty();
    }

    [Fact]
    public void So_is_every_figure_of_a_job_that_passes_limits_weighs_cans_and_goes_by_a_panel()
    {
        const string text = """
            coatplan: 1
            job: Bench in a shed
            units: metric
            start: 2027-05-14 08:00
            as-of: 2027-05-14 09:30
            place: {volume: 30 m3, mixing: 5, weather: {steady: {air: 21 °C, humidity: 50 %}}}
            crew: {people: 1, stations: 2, hours: {Mon-Sun: 08:00-18:00}}
            products:
              black: {preset: underhood-black-aerosol, package: {net: 12 oz, price: 9.5}, lightness: black}
              white: {covers: 1.2 m2, package: {net: 12 oz}, times: {touch: 20 min, handle: 2 h}, recoat: after 10 min, limits: {air: 10-32 °C}, hiding: 0.7, lightness: white, coats: 2-6, solvents: {toluene: 30 %}}
            systems: {s: [{product: black, coats: 2}], w: [{product: white, mist: true, coats: 2}]}
            surfaces:
              - {name: Panel, material: steel, area: 1 m2, condition: [sound], finish: factory paint, lead-test: negative, system: s}
              - {name: Lid, material: steel, shape: [{disc: {diameter: 40 cm, sides: 2}}], finish: factory paint, lead-test: negative, lightness: black, system: w}
            test-panels: [{product: black, area: 900 cm2, coats: 2, used: 42 g, hides-after: 2}]
            done: [{surface: panel, layer: 1, coat: 1, at: 2027-05-14 09:20, cans: 150 g}]
            prices: {labour: 8555 /h, currency: JPY, consumables: {tack cloth: {price: 150}}}
            """;

        var (plan, workings) = Planner.Work(Ready(text), SearchDepth.Quick);

        plan.Air.Mends.ShouldNotBeEmpty();
        plan.Weighed.ShouldNotBeEmpty();
        plan.Layers.ShouldContain(layer => layer.PrimerCoats != null);
        Unexplained(plan, workings).ShouldBeEmpty();
    }

    private static string[] Unexplained(Plan plan, Workings workings)
    {
        using var json = JsonDocument.Parse(PlanJson.Write(plan));
        var index = Explaining.Index(workings);
        return [.. Leaves(json.RootElement, "").Select(leaf => Complaint(leaf.Path, leaf.Value, index)).OfType<string>()];
    }

    private static string? Complaint(string path, JsonElement value, Dictionary<string, Topic> index)
    {
        if (!index.TryGetValue(Explaining.Plain(path), out var topic))
            return $"{path} ({value}) cannot be asked for";

        var explanation = topic.Explain();
        if (All(explanation).FirstOrDefault(one => one.Source.Length == 0 || one.What.Length == 0 || one.Value.Length == 0) is { } empty)
            return $"{path}: '{empty.What}' has no value or no source";
        if (value.ValueKind == JsonValueKind.Number && !(Math.Abs(explanation.Number.GetValueOrDefault(double.NaN) - value.GetDouble()) <= 0.006 + (1e-4 * Math.Abs(value.GetDouble()))))
            return $"{path} is {value}, explained is {explanation.Number}";
        return null;
    }

    private static IEnumerable<Explanation> All(Explanation explanation) => explanation.Inputs.SelectMany(All).Prepend(explanation);

    private static IEnumerable<(string Path, JsonElement Value)> Leaves(JsonElement item, string path) => item.ValueKind switch
    {
        JsonValueKind.Object => item.EnumerateObject().SelectMany(property => Leaves(property.Value, path.Length == 0 ? property.Name : $"{path}.{property.Name}")),
        JsonValueKind.Array => item.EnumerateArray().SelectMany((element, i) => Leaves(element, $"{path}[{i}]")),
        JsonValueKind.Number when !Given.Contains(path) => [(path, item)],
        JsonValueKind.String when !Given.Contains(path) && IsMoment(item.GetString()!) => [(path, item)],
        _ => [],
    };

    private static bool IsMoment(string text) => text.Length == 19 && text[10] == 'T' && char.IsAsciiDigit(text[0]);

    private static ReadyJob Ready(string text)
    {
        var reading = JobIntake.Read(text, "test.job.yaml", Trade.Standard, _ => FileText.Unreadable("there is none"));
        reading.Problems.ShouldBeEmpty();
        return reading.Ready!;
    }
}
