using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace CoatPlan.App.Commands;

/// <summary>The help of a command, with an example of it at the end.</summary>
internal sealed class ExampleHelp(HelpAction usual) : SynchronousCommandLineAction
{
    private static readonly ImmutableSortedDictionary<string, string> Examples = new Dictionary<string, string>
    {
        ["open"] = "coatplan roadster.job.yaml",
        ["plan"] = "coatplan plan roadster.job.yaml --json",
        ["explain"] = "coatplan explain roadster.job.yaml cans black",
        ["check"] = "coatplan check roadster.job.yaml",
        ["sheets"] = "coatplan sheets roadster.job.yaml --to sheets",
        ["done"] = "coatplan done roadster.job.yaml mask/black-on-metal --at 14:20 --took \"25 min\"",
        ["when"] = "coatplan when roadster.job.yaml",
        ["chance"] = "coatplan chance roadster.job.yaml",
        ["compare"] = "coatplan compare roadster.job.yaml roadster-with-heater.job.yaml",
        ["new"] = "coatplan new roadster.job.yaml",
        ["presets"] = "coatplan presets rust",
        ["schema"] = "coatplan schema > job.schema.json",
        ["completion"] = "source <(coatplan completion bash)",
        ["manual"] = "coatplan manual | man -l -",
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    private const string RootExample = "coatplan roadster.job.yaml";

    /// <summary>The example of a command.</summary>
    /// <param name="command">The command.</param>
    public static string Of(Command command) => Examples.GetValueOrDefault(command.Name, RootExample);

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        var result = usual.Invoke(parseResult);
        var output = parseResult.InvocationConfiguration.Output;
        output.WriteLine("Example:");
        output.WriteLine($"  {Of(parseResult.CommandResult.Command)}");
        output.WriteLine();
        output.WriteLine($"Exit codes: {string.Join("; ", ExitCode.Meanings.Select(each => $"{each.Code} {each.When}"))}.");
        return result;
    }
}
