using System.CommandLine;
using System.CommandLine.Completions;

namespace CoatPlan.App.Commands;

/// <summary>What may stand where the last word stands: commands, options, their choices, job files, folders.</summary>
internal static class Suggestions
{
    private static readonly ImmutableArray<string> JobEndings = [".yaml", ".yml", ".json"];

    /// <summary>The suggestions in order, each a whole word; a folder ends with a slash.</summary>
    /// <param name="root">The root command.</param>
    /// <param name="words">What was typed after the program's name; the last word is the one to complete and may be empty.</param>
    public static ImmutableArray<string> Of(Command root, IReadOnlyList<string> words)
    {
        var typed = words.Count == 0 ? "" : words[^1];
        var before = words.Take(Math.Max(0, words.Count - 1)).ToList();
        var command = before.Count == 0 ? null : root.Subcommands.FirstOrDefault(each => each.Name == before[0]);
        var all = command is null ? InFrontOf(root, before, typed) : Behind(command, root, before[1..], typed);
        return [.. all.Where(word => word.StartsWith(typed, StringComparison.Ordinal)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
    }

    // Without a command's name the program opens a job: what is typed first is a command or a job file.
    private static IEnumerable<string> InFrontOf(Command root, List<string> before, string typed)
    {
        var open = root.Subcommands.First(each => each.Name == OpenCommand.Name);
        if (before.Count > 0)
            return Behind(open, root, before, typed);
        return typed.StartsWith('-')
            ? Options(root).Concat(Options(open))
            : root.Subcommands.Where(each => !each.Hidden).Select(each => each.Name).Concat(Paths(typed, JobEndings));
    }

    private static IEnumerable<string> Behind(Command command, Command root, List<string> before, string typed)
    {
        if (before.Count > 0 && OptionOf(command, before[^1]) is { } asking)
            return Values(asking, asking.HelpName, typed);
        if (typed.StartsWith('-'))
            return Options(command).Concat(Options(root).Where(name => name is not "--version"));
        var given = before.Where((word, at) => !word.StartsWith('-') && (at == 0 || OptionOf(command, before[at - 1]) is null)).Count();
        return command.Arguments.Skip(given).FirstOrDefault() is { } argument ? Values(argument, argument.Name, typed) : [];
    }

    private static Option? OptionOf(Command command, string word) =>
        command.Options.FirstOrDefault(option => option.Arity.MaximumNumberOfValues > 0 && option.ValueType != typeof(bool) && (option.Name == word || option.Aliases.Contains(word)));

    private static IEnumerable<string> Options(Command command) =>
        command.Options.Where(option => !option.Hidden).Select(option => option.Name);

    // What the help calls JOB, OTHER or FILE is a job file, what it calls DIR a folder.
    private static IEnumerable<string> Values(Symbol symbol, string? called, string typed) => called switch
    {
        "JOB" or "OTHER" or "FILE" => Paths(typed, JobEndings),
        "DIR" => Paths(typed, []),
        _ => symbol.GetCompletions(CompletionContext.Empty).Select(item => item.InsertText ?? item.Label),
    };

    private static IEnumerable<string> Paths(string typed, ImmutableArray<string> endings)
    {
        var cut = typed.LastIndexOf('/') + 1;
        var folder = typed[..cut];
        try
        {
            return [.. new DirectoryInfo(folder.Length == 0 ? "." : folder).EnumerateFileSystemInfos()
                // A name that could steer the terminal is left for the person to type.
                .Where(entry => !entry.Name.Any(char.IsControl))
                .Where(entry => cut < typed.Length || !entry.Name.StartsWith('.'))
                .Where(entry => entry is DirectoryInfo || endings.Any(ending => entry.Name.EndsWith(ending, StringComparison.OrdinalIgnoreCase)))
                .Select(entry => folder + entry.Name + (entry is DirectoryInfo ? "/" : ""))];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException)
        {
            // Nothing to suggest in a folder that cannot be read.
            return [];
        }
    }
}
