using System.Text;
using CoatPlan.App;

namespace CoatPlan.Tests.Commands;

/// <summary>One run of the program in this process: arguments and input in, output, errors and exit code out.</summary>
/// <param name="ExitCode">The exit code.</param>
/// <param name="Output">What was written to standard output.</param>
/// <param name="Errors">What was written to standard error.</param>
internal sealed record CommandRun(int ExitCode, string Output, string Errors)
{
    public IReadOnlyList<string> ErrorLines => Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    public static CommandRun Of(params string[] arguments) => WithInput("", arguments);

    public static CommandRun WithInput(string input, params string[] arguments) => WithInput(Encoding.UTF8.GetBytes(input), arguments);

    public static CommandRun WithInput(byte[] input, params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var exitCode = Edge.Run(arguments, new Surroundings
        {
            Out = output,
            Error = errors,
            OpenInput = () => new MemoryStream(input),
            InputIsTerminal = false,
            OutputIsTerminal = false,
        });
        return new CommandRun(exitCode, output.ToString(), errors.ToString());
    }
}
