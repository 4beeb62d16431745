using System.CommandLine;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan manual</c>: the manual page, for <c>man</c>.</summary>
internal static class ManualCommand
{
    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    /// <param name="root">The command that the page is about.</param>
    public static Command Of(Surroundings surroundings, RootCommand root)
    {
        var command = new Command("manual", "Print the manual page; read it with: coatplan manual | man -l -");
        command.SetAction(_ =>
        {
            surroundings.Out.Write(ManPage.Of(root));
            return ExitCode.Done;
        });
        return command;
    }
}
