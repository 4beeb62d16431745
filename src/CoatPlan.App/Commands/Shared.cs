using System.CommandLine;
using System.CommandLine.Parsing;

namespace CoatPlan.App.Commands;

/// <summary>Arguments and options that several commands take.</summary>
internal static class Shared
{
    /// <summary>The option that asks for the whole story of an unforeseen error.</summary>
    public const string Trace = "--trace";

    /// <summary>The job file, or standard input.</summary>
    /// <param name="name">What the help calls it.</param>
    public static Argument<string> JobArgument(string name = "JOB")
    {
        var job = new Argument<string>(name) { Description = "Job file, or - for standard input" };
        job.Validators.Add(RefuseOption);
        return job;
    }

    /// <summary>Says so when an option that does not exist was taken for the name of a file.</summary>
    /// <param name="result">The argument as typed.</param>
    public static void RefuseOption(ArgumentResult result)
    {
        if (result.Tokens is [var token] && token.Value.Length > 1 && token.Value.StartsWith('-'))
            result.AddError($"'{token.Value}' is no option of this command (a file of that name can be given as ./{token.Value})");
    }

    /// <summary>JSON instead of text.</summary>
    /// <param name="says">What the JSON holds.</param>
    public static Option<bool> JsonOption(string says) => new("--json") { Description = says };

    /// <summary>The folder with presets of the user's own.</summary>
    public static Option<string?> PresetsOption() => new("--presets")
    {
        Description = "Folder with preset files that override the built-in ones",
        HelpName = "DIR",
    };

    /// <summary>The stack trace of an error that nobody foresaw.</summary>
    public static Option<bool> TraceOption() => new(Trace)
    {
        Description = "On an unforeseen error, print where it arose",
        Recursive = true,
    };
}
