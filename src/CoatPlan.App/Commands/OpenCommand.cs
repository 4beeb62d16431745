using System.CommandLine;
using CoatPlan.App.Desk;
using CoatPlan.App.Screens;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan [JOB]</c>: the terminal UI. The word <c>open</c> can be left out.</summary>
internal static class OpenCommand
{
    /// <summary>Its name.</summary>
    public const string Name = "open";

    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    public static Command Of(Surroundings surroundings)
    {
        var command = new Command(Name, "Open the terminal UI; the word open can be left out.");
        var job = new Argument<string?>("JOB") { Description = "Job file to open; a new job where none is given", Arity = ArgumentArity.ZeroOrOne };
        job.Validators.Add(Shared.RefuseOption);
        command.Add(job);
        var sources = SourceOptions.AddedTo(command);
        command.SetAction(parsed => Run(surroundings, parsed.GetValue(job), sources.Of(parsed)));
        return command;
    }

    private static int Run(Surroundings surroundings, string? job, Sources sources)
    {
        // Decided before anything touches the terminal: a redirected stream would leave the toolkit waiting for ever.
        if (!surroundings.InputIsTerminal || !surroundings.OutputIsTerminal)
        {
            throw new BadInputException(job is null
                ? "coatplan: the terminal UI needs a terminal; see coatplan --help for the commands that do not"
                : $"coatplan: the terminal UI needs a terminal; without one, try: coatplan plan {job}");
        }

        var workshop = JobSource.Workshop(sources);
        var now = surroundings.WallTime();
        using var file = job is null ? JobFile.Unnamed(NewJob.Text(now), surroundings.OwnFolder) : JobFile.Open(job);
        TerminalUi.Run(surroundings, file, workshop, job is null ? NewJob.Start(now) : null);
        return ExitCode.Done;
    }
}
