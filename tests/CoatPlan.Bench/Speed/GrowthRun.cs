using System.Diagnostics;
using System.Globalization;
using CoatPlan.Bench.Screens;
using CoatPlan.Timetable;

namespace CoatPlan.Bench.Speed;

/// <summary>How time and memory of the plan that is shown at once grow with the job, as multiples of the smallest one.</summary>
/// <remarks>
/// All in one process and in turn: each round plans every size once, and a time is divided by that of the smallest in its own round, so that other work on the machine
/// lengthens both.
/// </remarks>
public static class GrowthRun
{
    private const int UsualRounds = 5;

    private static readonly ImmutableArray<int> Sizes = [25, 100, 400, 1000, 5000];

    public static int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter errors)
    {
        var rounds = UsualRounds;
        if (arguments.Count > 1 || (arguments is [var said] && (!int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out rounds) || rounds == 0)))
        {
            errors.WriteLine("usage: growth [ROUNDS]");
            return 2;
        }

        var jobs = Sizes.Select(surfaces => BenchJobs.NotBegun(surfaces)).ToArray();
        // Compiled and with its caches filled, as it is for a person who edits.
        foreach (var job in jobs)
            Planner.Plan(job, SearchDepth.Quick);

        var times = Sizes.Select(_ => new Figures()).ToArray();
        var ratios = Sizes.Select(_ => new Figures()).ToArray();
        var allocated = new long[Sizes.Length];
        for (var round = 0; round < rounds; round++)
        {
            var smallest = TimeSpan.Zero;
            for (var size = 0; size < Sizes.Length; size++)
            {
                (var taken, allocated[size]) = Measure(jobs[size]);
                smallest = size == 0 ? taken : smallest;
                times[size].Add(taken);
                ratios[size].Add(taken / smallest);
            }
        }

        for (var size = 0; size < Sizes.Length; size++)
        {
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{Sizes[size]} surfaces ({(double)Sizes[size] / Sizes[0]:0} ×): {times[size].At(0.5):0.0} ms median, {ratios[size].At(0.5):0.0} ×; {allocated[size] / 1e6:0.0} MB, {(double)allocated[size] / allocated[0]:0.0} ×"));
        }

        return 0;
    }

    private static (TimeSpan Taken, long Allocated) Measure(ReadyJob job)
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        var fresh = BenchJobs.Fresh(job);
        var (before, from) = (GC.GetTotalAllocatedBytes(precise: true), Stopwatch.GetTimestamp());
        Planner.Plan(fresh, SearchDepth.Quick);
        var taken = Stopwatch.GetElapsedTime(from);
        return (taken, GC.GetTotalAllocatedBytes(precise: true) - before);
    }
}
