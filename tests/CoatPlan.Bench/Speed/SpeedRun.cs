using System.Globalization;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace CoatPlan.Bench.Speed;

/// <summary>Measures how fast jobs are planned, all in one process so that its ratios compare like with like.</summary>
public static class SpeedRun
{
    public static int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter errors)
    {
        switch (arguments)
        {
            case []:
                Replan(output);
                Measure<Examples>();
                Chance(output);
                return 0;
            case ["replan"]:
                Replan(output);
                return 0;
            case ["examples"]:
                Measure<Examples>();
                return 0;
            case ["chance"]:
                Chance(output);
                return 0;
            default:
                errors.WriteLine("usage: speed [replan|examples|chance]");
                return 2;
        }
    }

    private static void Replan(TextWriter output)
    {
        var median = MedianBy<Replanning>(nameof(Replanning.Surfaces));
        foreach (var ((change, surfaces), milliseconds) in median)
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"replan of {surfaces} surfaces, {change.ToLowerInvariant()}: {milliseconds:0.00} ms median"));
        if (median.TryGetValue((nameof(Replanning.Ticked), 100), out var hundred) && median.TryGetValue((nameof(Replanning.Ticked), 1000), out var thousand))
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"1,000 surfaces take {thousand / hundred:0.0} times as long as 100"));
    }

    private static void Chance(TextWriter output)
    {
        foreach (var ((_, draws), milliseconds) in MedianBy<Drawing>(nameof(Drawing.Draws)))
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{draws} draws of 25 surfaces: {milliseconds:0} ms median"));
    }

    // For each benchmark and number that it is run with, its median in milliseconds.
    private static Dictionary<(string Name, int Number), double> MedianBy<T>(string parameter) => Measure<T>().Reports
        .Where(report => report.Success)
        .ToDictionary(
            report => (report.BenchmarkCase.Descriptor.WorkloadMethod.Name, (int)report.BenchmarkCase.Parameters[parameter]),
            report => report.ResultStatistics!.Median / 1e6);

    // One process for all: a project made and built for each case is not needed where nothing differs but the job.
    private static Summary Measure<T>() => BenchmarkRunner.Run<T>(ManualConfig.CreateEmpty()
        .AddJob(Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithWarmupCount(5).WithIterationCount(15))
        .AddColumnProvider(DefaultColumnProviders.Instance)
        .AddColumn(StatisticColumn.Median, StatisticColumn.P95)
        .AddLogger(ConsoleLogger.Default)
        .WithArtifactsPath(Path.Combine(Path.GetTempPath(), "coatplan-bench")));
}
