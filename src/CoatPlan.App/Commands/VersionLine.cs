using System.CommandLine;
using System.CommandLine.Invocation;
using System.Reflection;

namespace CoatPlan.App.Commands;

/// <summary>The version, alone on a line.</summary>
internal sealed class VersionLine : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        parseResult.InvocationConfiguration.Output.WriteLine(
            typeof(VersionLine).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion);
        return ExitCode.Done;
    }
}
