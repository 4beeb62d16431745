using System.CommandLine;
using CoatPlan.Explanations;
using CoatPlan.Sheets.Text;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan explain JOB WHAT</c>: any figure of the plan with its sum, what it follows from, and where that is from.</summary>
internal static class ExplainCommand
{
    private const int Step = 3;

    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    public static Command Of(Surroundings surroundings)
    {
        var command = new Command("explain", "Explain a figure of the plan: its sum, what it follows from, and the source of each.");
        var job = Shared.JobArgument();
        var what = new Argument<string[]>("WHAT")
        {
            Description = "The figure: cans KEY, finish, air, quote, area SURFACE, step 12 leastMin, or its place in the plan's JSON, such as supplies[black].cans",
            Arity = ArgumentArity.OneOrMore,
        };
        var json = new Option<bool>("--json") { Description = "Print the explanation as JSON, for scripts" };
        command.Add(job);
        command.Add(what);
        command.Add(json);
        var sources = SourceOptions.AddedTo(command);
        command.SetAction(parsed => Run(
            surroundings,
            JobSource.Open(surroundings, parsed.GetRequiredValue(job), sources.Of(parsed)),
            string.Join(' ', parsed.GetRequiredValue(what)),
            parsed.GetValue(json)));
        return command;
    }

    private static int Run(Surroundings surroundings, OpenedJob opened, string what, bool json)
    {
        var reading = Planner.Explain(opened.Ready, what);
        if (reading.Explanation is not { } explanation)
            throw new BadInputException($"'{what}': no figure of the plan is called so; did you mean {string.Join(", ", reading.Suggestions.Select(name => $"'{name}'"))}?");

        if (json)
        {
            surroundings.Out.Write(ExplanationJson.Write(explanation));
            return ExitCode.Done;
        }

        if (explanation.Path.Length > 0)
            surroundings.Say(explanation.Path);
        Print(surroundings, explanation, 0);
        return ExitCode.Done;
    }

    private static void Print(Surroundings surroundings, Explanation explanation, int depth)
    {
        var indent = new string(' ', depth * Step);
        Say(indent, $"{explanation.What}: {explanation.Value}");
        if (explanation.Formula.Length > 0)
            Say(indent + "  = ", explanation.Formula);
        Say(indent + "  source: ", explanation.Source);
        foreach (var input in explanation.Inputs)
            Print(surroundings, input, depth + 1);

        void Say(string lead, string text)
        {
            foreach (var line in Wrapping.Hanging(lead, text, Math.Max(surroundings.Width, TextStyle.Narrowest)))
                surroundings.Out.WriteLine(line);
        }
    }
}
