using System.Diagnostics;
using System.Globalization;
using CoatPlan.Bench.Speed;
using CoatPlan.Scheduling;
using CoatPlan.Tests.Properties;
using CoatPlan.Tests.Scheduling;

namespace CoatPlan.Bench.Exact;

/// <summary>The small jobs of the tests beside an exact solver: how long each takes, and how far the finish that is found lies above the least one.</summary>
/// <remarks>
/// The solver runs on one thread, as in the tests, and is told the finish that was found as the latest to look at. Its time includes writing the model. Each pair is run
/// one after the other, so that other work on the machine lengthens both.
/// </remarks>
public static class ExactRun
{
    private const int UsualSeeds = 12;

    /// <summary>As the tests search networks of this size.</summary>
    private static readonly Effort Small = new(200, 5000);

    public static int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter errors)
    {
        var seeds = UsualSeeds;
        if (arguments.Count > 1 || (arguments is [var said] && (!int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out seeds) || seeds == 0)))
        {
            errors.WriteLine("usage: exact [SEEDS]");
            return 2;
        }

        Compare("networks", OfNetwork, seeds, output);
        Compare("jobs in steady air", OfJob, seeds, output);
        return 0;
    }

    private static void Compare(string what, Func<int, Pair?> of, int seeds, TextWriter output)
    {
        // Compiled and loaded first: the solver is a library of its own.
        of(0);
        var pairs = Enumerable.Range(0, seeds).Select(of).OfType<Pair>().ToArray();
        if (pairs.Length == 0)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: none of {seeds} was settled by both"));
            return;
        }

        var (ours, exact) = (pairs.Sum(pair => pair.Ours.TotalMilliseconds), pairs.Sum(pair => pair.Exact.TotalMilliseconds));
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{pairs.Length} of {seeds} {what}: {ours / exact:0.000} of the exact solver's time ({ours / pairs.Length:0} ms and {exact / pairs.Length:0} ms on the average), faster in {pairs.Count(pair => pair.Ours < pair.Exact)}; mean gap {pairs.Average(pair => pair.Gap):0.00 %}, largest {pairs.Max(pair => pair.Gap):0.00 %}"));
    }

    private static Pair? OfNetwork(int seed)
    {
        var network = SmallNetworks.Make(seed);
        var from = Stopwatch.GetTimestamp();
        var schedule = Scheduler.Schedule(network, Small).Schedule;
        var ours = Stopwatch.GetElapsedTime(from);
        if (schedule is null)
            return null;

        from = Stopwatch.GetTimestamp();
        var least = ExactOptimum.Of(network, schedule.Finish);
        return Of(ours, Stopwatch.GetElapsedTime(from), schedule.Finish, least);
    }

    private static Pair? OfJob(int seed)
    {
        var job = SteadyJob.Draw(seed);
        var ready = BenchJobs.Ready(job.Text);
        var from = Stopwatch.GetTimestamp();
        var plan = Planner.Plan(ready);
        var ours = Stopwatch.GetElapsedTime(from);
        if (!plan.Reasons.IsEmpty)
            return null;

        from = Stopwatch.GetTimestamp();
        var least = new SteadyOptimum(job, plan).Solve();
        return Of(ours, Stopwatch.GetElapsedTime(from), (int)Period.Between(plan.Start, plan.Finish!.Value, PeriodUnits.Minutes).Minutes, least);
    }

    private static Pair? Of(TimeSpan ours, TimeSpan exact, int finish, int? least) =>
        least is { } known ? new Pair(ours, exact, (double)(finish - known) / known) : null;

    /// <summary>One job, both ways.</summary>
    private sealed record Pair(TimeSpan Ours, TimeSpan Exact, double Gap);
}
