using BenchmarkDotNet.Attributes;
using CoatPlan.Timetable;

namespace CoatPlan.Bench.Speed;

/// <summary>The jobs that come with the program: read, planned at once, and planned in full as they are printed.</summary>
[MemoryDiagnoser]
public class Examples
{
    private string text = "";
    private ReadyJob ready = null!;

    /// <summary>The example's file.</summary>
    [ParamsSource(nameof(Files))]
    public string Job { get; set; } = "";

    /// <summary>The files, by name.</summary>
    public static IEnumerable<string> Files =>
        Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "presets", "jobs"), "*.job.yaml").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal);

    [GlobalSetup]
    public void Open()
    {
        text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "presets", "jobs", Job));
        ready = BenchJobs.Ready(text);
    }

    /// <summary>From text to a checked job.</summary>
    [Benchmark]
    public ReadyJob Read() => BenchJobs.Ready(text);

    /// <summary>The plan that is shown at once.</summary>
    [Benchmark(Baseline = true)]
    public Plan Quick() => Planner.Plan(BenchJobs.Fresh(ready), SearchDepth.Quick);

    /// <summary>The plan that is printed.</summary>
    [Benchmark]
    public Plan Full() => Planner.Plan(BenchJobs.Fresh(ready), SearchDepth.Full);
}
