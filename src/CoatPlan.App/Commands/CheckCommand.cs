using System.CommandLine;
using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Sheets.Text;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan check JOB</c>: every mistake in a job file, or what it holds.</summary>
internal static class CheckCommand
{
    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    public static Command Of(Surroundings surroundings)
    {
        var command = new Command("check", "Find every mistake in a job file without planning it.");
        var job = Shared.JobArgument();
        command.Add(job);
        var sources = SourceOptions.AddedTo(command);
        command.SetAction(parsed =>
        {
            var opened = JobSource.Open(surroundings, parsed.GetRequiredValue(job), sources.Of(parsed));
            var warnings = JobIntake.CountsForNothing(opened.Ready);
            surroundings.Say($"{opened.Name}: {Summary(opened.Job)}; {(warnings.IsEmpty ? "nothing wrong" : $"no mistake, but {Written.Count(warnings.Length, "warning", "warnings")}")}");
            foreach (var line in warnings.SelectMany(warning => Wrapping.Hanging("  ! ", warning.Text, Math.Max(surroundings.Width, TextStyle.Narrowest))))
                surroundings.Say(line);
            return ExitCode.Done;
        });
        return command;
    }

    private static string Summary(Job job) => string.Join(", ",
        Written.Count(job.Surfaces.Length, "surface", "surfaces"),
        Written.Count(job.Surfaces.Sum(surface => surface.Count), "piece", "pieces"),
        Written.Count(job.Systems.Length, "system", "systems"),
        Written.Count(job.Products.Length, "product", "products"));
}
