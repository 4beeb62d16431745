using BenchmarkDotNet.Attributes;
using CoatPlan.Outlook;
using CoatPlan.Timetable;

namespace CoatPlan.Bench.Speed;

/// <summary>The chance of a job: its quick plan carried out thousands of times, on all cores.</summary>
[MemoryDiagnoser]
public class Drawing
{
    private ReadyJob ready = null!;

    /// <summary>The plan alone, and as many draws as a person gets who asks for no number.</summary>
    [Params(1, ChanceAsked.UsualDraws)]
    public int Draws { get; set; }

    [GlobalSetup]
    public void Read() => ready = BenchJobs.Ready(BenchJobs.Text(25));

    /// <summary>A job of 25 surfaces.</summary>
    [Benchmark]
    public Chance? Of25Surfaces() =>
        Chances.Of(BenchJobs.Fresh(ready), new ChanceAsked { Draws = Draws, BuyDraws = 0, Depth = SearchDepth.Quick, Threads = Environment.ProcessorCount });
}
