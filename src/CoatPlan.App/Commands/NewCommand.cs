using System.CommandLine;
using System.Text;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan new FILE</c>: a job file to start from, which plans as it stands.</summary>
internal static class NewCommand
{
    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    public static Command Of(Surroundings surroundings)
    {
        var command = new Command("new", "Write a job file to start from; a file that exists is left alone.");
        var file = new Argument<string>("FILE") { Description = "File to write; - for standard output" };
        command.Add(file);
        command.SetAction(parsed => Run(surroundings, parsed.GetRequiredValue(file)));
        return command;
    }

    private static int Run(Surroundings surroundings, string path)
    {
        var text = NewJob.Text(surroundings.WallTime());
        if (path == "-")
        {
            surroundings.Out.Write(text);
            return ExitCode.Done;
        }

        Write(path, text);
        surroundings.Say($"{path}: written; open it with: coatplan {path}");
        return ExitCode.Done;
    }

    private static void Write(string path, string text)
    {
        try
        {
            AtomicFile.Create(path, Encoding.UTF8.GetBytes(text));
        }
        catch (IOException) when (File.Exists(path) || Directory.Exists(path))
        {
            throw new BadInputException($"{path}: exists already; expected the name of a file that does not");
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw WriteFailure.Of(path, exception);
        }
    }
}
