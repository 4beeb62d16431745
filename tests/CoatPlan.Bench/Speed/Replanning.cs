using BenchmarkDotNet.Attributes;
using CoatPlan.Timetable;
using UnitsNet;

namespace CoatPlan.Bench.Speed;

/// <summary>A job that is under way, planned again after something changed: what a person waits for at every tick and every edit.</summary>
[MemoryDiagnoser]
public class Replanning
{
    // So many sizes of one part before they come round again.
    private const int Sizes = 500;

    // Read one after the other, as the program reads a job after a change of its text.
    private ReadyJob[] ticked = [];

    // The best plan before the tick, which stands on the screen when it comes.
    private Plan shown = null!;
    private int turn;
    private int edits;

    /// <summary>25 is an engine bay with all its brackets; 100 and 1,000 show how the time grows.</summary>
    [Params(25, 100, 1000)]
    public int Surfaces { get; set; }

    [GlobalSetup]
    public void Read()
    {
        var job = BenchJobs.TextUnderWay(Surfaces);
        var withoutLast = job[..(job.TrimEnd('\n').LastIndexOf('\n') + 1)];
        var before = BenchJobs.Ready(withoutLast);
        ticked = [before, BenchJobs.Ready(job, before)];
        shown = Planner.Plan(before);
    }

    /// <summary>One more step is done, or taken back: the plan that is shown at once.</summary>
    [Benchmark(Baseline = true)]
    public Plan Ticked()
    {
        turn = 1 - turn;
        return Planner.Replan(ticked[turn], shown);
    }

    /// <summary>The same, as if no plan stood on the screen yet.</summary>
    [Benchmark]
    public Plan Alone()
    {
        turn = 1 - turn;
        return Planner.Plan(ticked[turn], SearchDepth.Quick);
    }

    /// <summary>A part is larger than it was, so that all but the air is worked out anew.</summary>
    [Benchmark]
    public Plan Edited()
    {
        var job = ticked[1].Job;
        var larger = job.Surfaces[0] with { Area = Area.FromSquareFeet(1 + (++edits % Sizes / 100.0)) };
        return Planner.Replan(ticked[1].With(job with { Surfaces = job.Surfaces.SetItem(0, larger) }), shown);
    }

    /// <summary>A job of which nothing was planned before.</summary>
    [Benchmark]
    public Plan Fresh() => Planner.Plan(BenchJobs.Fresh(ticked[1]), SearchDepth.Quick);
}
