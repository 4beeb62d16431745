using System.Diagnostics;
using System.Globalization;
using CoatPlan.Scheduling;

namespace CoatPlan.Bench.Instances;

/// <summary>Schedules published instances and prints one line each: the name, the makespan or what is known instead, and the milliseconds taken.</summary>
public static class InstanceRun
{
    public static int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter errors)
    {
        var withStarts = arguments.Contains("--starts");
        var files = arguments.Where(a => a != "--starts").ToArray();
        if (files.Length == 0)
        {
            errors.WriteLine("usage: instances [--starts] FILE…");
            return 2;
        }

        foreach (var file in files)
        {
            output.WriteLine(LineFor(file, withStarts ? Starts : _ => ""));
            output.Flush();
        }

        return 0;
    }

    private static string LineFor(string file, Func<Schedule, string> more)
    {
        var network = ProjectInstance.Read(file);
        var watch = Stopwatch.StartNew();
        var outcome = Scheduler.Schedule(network, Effort.Standard);
        var milliseconds = watch.Elapsed.TotalMilliseconds;

        var answer = outcome switch
        {
            // The makespan is the start of the last activity, the moment at which all is done.
            { Schedule: { } schedule } => schedule.Placements[^1].Start.ToString(CultureInfo.InvariantCulture),
            { Verdict: Verdict.Infeasible } => "infeasible",
            _ => "unknown",
        };
        var starts = outcome.Schedule is null ? "" : more(outcome.Schedule);
        return string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileName(file)} {answer} {milliseconds:0.0}{starts}");
    }

    private static string Starts(Schedule schedule) =>
        string.Concat(schedule.Placements.Select(p => string.Create(CultureInfo.InvariantCulture, $" {p.Start}")));
}
