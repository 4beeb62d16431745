using System.CommandLine;
using System.CommandLine.Help;
using CoatPlan.Problems;

namespace CoatPlan.App.Commands;

/// <summary>Every command of the program, with its arguments, options and help.</summary>
internal static class CommandTree
{
    private const string About =
        "Plans the refinishing of the parts around an engine: what to do in which order and when, what to buy, what to mask, what to wear. "
        + "With nothing but a job file, or with nothing at all, it opens the terminal UI.";

    /// <summary>The root command.</summary>
    /// <param name="surroundings">What the commands may reach.</param>
    public static RootCommand Of(Surroundings surroundings)
    {
        var root = new RootCommand(About);
        root.Add(Shared.TraceOption());
        root.Add(OpenCommand.Of(surroundings));
        root.Add(PlanCommand.Of(surroundings));
        root.Add(ExplainCommand.Of(surroundings));
        root.Add(CheckCommand.Of(surroundings));
        root.Add(SheetsCommand.Of(surroundings));
        root.Add(DoneCommand.Of(surroundings));
        root.Add(WhenCommand.Of(surroundings));
        root.Add(ChanceCommand.Of(surroundings));
        root.Add(CompareCommand.Of(surroundings));
        root.Add(NewCommand.Of(surroundings));
        root.Add(PresetsCommand.Of(surroundings));
        root.Add(SchemaCommand.Of(surroundings));
        root.Add(CompletionCommand.Of(surroundings));
        root.Add(ManualCommand.Of(surroundings, root));
        root.Add(SuggestCommand.Of(surroundings, root));
        SayItOurWay(root);
        return root;
    }

    /// <summary>The arguments with the command that opens the terminal UI put in where the person left it out.</summary>
    /// <param name="root">The root command.</param>
    /// <param name="arguments">What the person typed.</param>
    public static IReadOnlyList<string> Spelled(RootCommand root, IReadOnlyList<string> arguments)
    {
        var names = root.Subcommands.Select(command => command.Name).ToHashSet(StringComparer.Ordinal);
        var first = FirstWord(arguments);
        var asksOfTheProgram = arguments.Any(argument => argument is "--help" or "-h" or "-?" or "--version");
        return (first is null && asksOfTheProgram) || (first is not null && (names.Contains(first) || first.StartsWith('[')))
            ? arguments
            : [OpenCommand.Name, .. arguments];
    }

    /// <summary>The command that was meant where the first word was taken for a job file and is nearly a command's name; null: none is near.</summary>
    /// <param name="root">The root command.</param>
    /// <param name="arguments">What the person typed.</param>
    public static (string Typed, string Meant)? Misspelt(RootCommand root, IReadOnlyList<string> arguments) =>
        !ReferenceEquals(Spelled(root, arguments), arguments) && FirstWord(arguments) is { } typed
        && Nearest.To(typed, root.Subcommands.Where(command => !command.Hidden).Select(command => command.Name)) is { } meant
            ? (typed, meant)
            : null;

    private static string? FirstWord(IReadOnlyList<string> arguments) => arguments.FirstOrDefault(argument => argument == "-" || !argument.StartsWith('-'));

    private static void SayItOurWay(RootCommand root)
    {
        foreach (var version in root.Options.OfType<VersionOption>())
            version.Action = new VersionLine();
        foreach (var help in root.Options.OfType<HelpOption>())
        {
            if (help.Action is HelpAction action)
                help.Action = new ExampleHelp(action);
        }
    }
}
