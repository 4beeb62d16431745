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
                return 0;
            case ["replan"]:
                Replan(output);
                return 0;
            case ["examples"]:
                Measure<Examples>();
                return 0;
            default:
                errors.WriteLine("usage: speed [replan|examples]");
                return 2;
        }
    }

    private static void Replan(TextWriter output)
    {
        var median = Measure<Replanning>().Reports
            .Where(report => report.Success)
            .ToDictionary(report => (int)report.BenchmarkCase.Parameters[nameof(Replanning.Surfaces)], report => report.ResultStatistics!.Median / 1e6);
        foreach (var (surfaces, milliseconds) in median)
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"replan of {surfaces} surfaces: {milliseconds:0.00} ms median"));
        if (median.TryGetValue(100, out var hundred) && median.TryGetValue(1000, out var thousand))
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"1,000 surfaces take {thousand / hundred:0.0} times as long as 100"));
    }

    // One process for all: a project made and built for each case is not needed where nothing differs but the job.
    private static Summary Measure<T>() => BenchmarkRunner.Run<T>(ManualConfig.CreateEmpty()
        .AddJob(Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithWarmupCount(5).WithIterationCount(15))
        .AddColumnProvider(DefaultColumnProviders.Instance)
        .AddColumn(StatisticColumn.Median, StatisticColumn.P95)
        .AddLogger(ConsoleLogger.Default)
        .WithArtifactsPath(Path.Combine(Path.GetTempPath(), "coatplan-bench")));
}
