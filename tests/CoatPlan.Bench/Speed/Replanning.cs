using BenchmarkDotNet.Attributes;
using CoatPlan.Timetable;

namespace CoatPlan.Bench.Speed;

/// <summary>A job that is under way, planned again after something changed: what a person waits for at every edit.</summary>
[MemoryDiagnoser]
public class Replanning
{
    private ReadyJob ready = null!;

    /// <summary>25 is an engine bay with all its brackets; 100 and 1,000 show how the time grows.</summary>
    [Params(25, 100, 1000)]
    public int Surfaces { get; set; }

    [GlobalSetup]
    public void Read() => ready = BenchJobs.UnderWay(Surfaces);

    /// <summary>The plan that is shown at once.</summary>
    [Benchmark(Baseline = true)]
    public Plan Quick() => Planner.Plan(ready, SearchDepth.Quick);
}
