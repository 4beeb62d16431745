using System.CommandLine;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan suggest -- WORDS</c>: what may stand where the last word stands, a line each; the scripts of the shells ask it.</summary>
internal static class SuggestCommand
{
    /// <summary>The command, which no help lists.</summary>
    /// <param name="surroundings">What it may reach.</param>
    /// <param name="root">The command whose words are suggested.</param>
    public static Command Of(Surroundings surroundings, Command root)
    {
        var command = new Command("suggest", "Print what may stand where the last word stands.") { Hidden = true };
        var words = new Argument<string[]>("WORDS") { Description = "What was typed after coatplan, the word to complete last, empty where it is not begun", Arity = ArgumentArity.ZeroOrMore };
        command.Add(words);
        command.SetAction(parsed =>
        {
            foreach (var suggestion in Suggestions.Of(root, parsed.GetValue(words) ?? []))
                surroundings.Out.WriteLine(suggestion);
            return ExitCode.Done;
        });
        return command;
    }
}
