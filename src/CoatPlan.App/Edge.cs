using CoatPlan.App.Commands;

namespace CoatPlan.App;

/// <summary>The program's edge: arguments in, exit code out, and the one place where errors end.</summary>
internal static class Edge
{
    /// <summary>Runs the program.</summary>
    /// <param name="arguments">What the person typed after the program's name.</param>
    /// <param name="surroundings">What it may reach.</param>
    /// <returns>An <see cref="ExitCode"/>.</returns>
    public static int Run(IReadOnlyList<string> arguments, Surroundings surroundings)
    {
        try
        {
            var result = Invoke(arguments, surroundings);
            surroundings.Out.Flush();
            return result;
        }
        catch (BadInputException exception)
        {
            surroundings.Out.Flush();
            foreach (var line in exception.Lines)
                surroundings.Complain(line);
            return ExitCode.BadInput;
        }
        catch (MachineException exception)
        {
            surroundings.Complain(exception.Message);
            return ExitCode.Trouble;
        }
        catch (IOException exception) when (WriteFailure.IsOfTheMachine(exception))
        {
            surroundings.Complain($"coatplan: the output cannot be written: {exception.Message}");
            return ExitCode.Trouble;
        }
        catch (IOException exception) when (IsBrokenPipe(exception))
        {
            // Whoever read our output has had enough, as in "coatplan plan JOB | head".
            return ExitCode.Done;
        }
#pragma warning disable CA1031 // The edge is the one place that catches everything: a person gets a sentence, not a stack trace.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            var told = arguments.Contains(Shared.Trace)
                ? exception.ToString().ReplaceLineEndings("\n").Split('\n')
                : [$"coatplan: {exception.Message.ReplaceLineEndings(" ")} (an error of the program; {Shared.Trace} prints where it arose)"];
            foreach (var line in told)
                surroundings.Complain(line);
            return ExitCode.Trouble;
        }
    }

    private static int Invoke(IReadOnlyList<string> arguments, Surroundings surroundings)
    {
        var root = CommandTree.Of(surroundings);
        var parsed = root.Parse(CommandTree.Spelled(root, arguments), new() { ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count > 0 && parsed.Action is not (ExampleHelp or null))
        {
            foreach (var error in parsed.Errors.Select(error => error.Message).Distinct(StringComparer.Ordinal))
                surroundings.Complain($"coatplan: {error.ReplaceLineEndings(" ")}");
            if (CommandTree.Misspelt(root, arguments) is { } word)
                surroundings.Complain($"coatplan: no command is called `{word.Typed}`; did you mean `{word.Meant}`?");
            surroundings.Complain($"coatplan: see coatplan {CommandOf(parsed)}--help");
            return ExitCode.BadInput;
        }

        return parsed.Invoke(new() { Output = surroundings.Out, Error = surroundings.Error, EnableDefaultExceptionHandler = false });
    }

    private static string CommandOf(System.CommandLine.ParseResult parsed) =>
        parsed.CommandResult.Command is System.CommandLine.RootCommand ? "" : $"{parsed.CommandResult.Command.Name} ";

    private static bool IsBrokenPipe(IOException exception)
    {
        const int unixBrokenPipe = 32;
        const int windowsBrokenPipe = 109;
        const int windowsPipeClosing = 232;
        const int facilityMask = 0xFFFF;
        return (exception.HResult & facilityMask) is unixBrokenPipe or windowsBrokenPipe or windowsPipeClosing
            || exception.InnerException is System.Net.Sockets.SocketException;
    }
}
