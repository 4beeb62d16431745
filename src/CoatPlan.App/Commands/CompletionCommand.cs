using System.CommandLine;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan completion SHELL</c>: the script with which a shell completes what is typed; it asks the program.</summary>
internal static class CompletionCommand
{
    /// <summary>Each shell by name with the file of its script.</summary>
    private static readonly ImmutableSortedDictionary<string, string> Scripts = new Dictionary<string, string>
    {
        ["bash"] = "coatplan.bash",
        ["zsh"] = "coatplan.zsh",
        ["fish"] = "coatplan.fish",
        ["pwsh"] = "coatplan.ps1",
    }.ToImmutableSortedDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>The shells whose script the program has.</summary>
    public static IEnumerable<string> Shells => Scripts.Keys;

    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    public static Command Of(Surroundings surroundings)
    {
        var command = new Command("completion", "Print the script that lets a shell complete commands, options and job files.");
        var shell = new Argument<string>("SHELL") { Description = string.Join(", ", Shells) };
        shell.AcceptOnlyFromAmong(StringComparer.OrdinalIgnoreCase, [.. Shells]);
        command.Add(shell);
        command.SetAction(parsed =>
        {
            surroundings.Out.Write(Printed.Resource($"completion/{Scripts[parsed.GetRequiredValue(shell)]}"));
            return ExitCode.Done;
        });
        return command;
    }
}
