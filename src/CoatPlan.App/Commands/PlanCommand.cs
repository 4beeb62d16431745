using System.CommandLine;
using System.Globalization;
using CoatPlan.Jobs;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan plan JOB</c>: the plan as text, or as JSON for scripts.</summary>
internal static class PlanCommand
{
    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    public static Command Of(Surroundings surroundings)
    {
        var command = new Command("plan", "Print the plan of a job: steps by day, what to buy, mask, breathe and beware of.");
        var job = Shared.JobArgument();
        var json = new Option<bool>("--json") { Description = "Print the plan as JSON, for scripts" };
        var width = WidthOption();
        command.Add(job);
        command.Add(json);
        command.Add(width);
        var sources = SourceOptions.AddedTo(command);
        command.SetAction(parsed =>
        {
            var opened = JobSource.Open(surroundings, parsed.GetRequiredValue(job), sources.Of(parsed));
            return parsed.GetValue(json)
                ? PrintJson(surroundings, opened)
                : PrintText(surroundings, opened, parsed.GetValue(width));
        });
        return command;
    }

    private static Option<int?> WidthOption() => new("--width")
    {
        Description = $"Columns of the text, {TextStyle.Narrowest} to {TextStyle.Widest}; 80 unless said",
        HelpName = "N",
        CustomParser = static result =>
        {
            var typed = result.Tokens.Count == 1 ? result.Tokens[0].Value : "";
            if (int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var columns)
                && columns is >= TextStyle.Narrowest and <= TextStyle.Widest)
            {
                return columns;
            }

            result.AddError($"--width: '{typed}' is no width; expected a whole number from {TextStyle.Narrowest} to {TextStyle.Widest}");
            return null;
        },
    };

    private static int PrintJson(Surroundings surroundings, OpenedJob opened)
    {
        var plan = Planner.Plan(opened.Ready);
        surroundings.Out.Write(PlanJson.Write(plan));
        return ResultOf(surroundings, plan);
    }

    private static int PrintText(Surroundings surroundings, OpenedJob opened, int? width)
    {
        var plan = Planner.Plan(opened.Ready);
        var style = new TextStyle(plan.Units, CurrencyOf(opened.Job), width ?? surroundings.Width, surroundings.Emphasis);
        foreach (var line in PlanText.Lines(plan, style))
            surroundings.Out.WriteLine(line);
        return ResultOf(surroundings, plan);
    }

    /// <summary>The exit code of a plan; its reasons go to the error stream where it is not what was asked.</summary>
    /// <param name="surroundings">What may be reached.</param>
    /// <param name="plan">The plan.</param>
    public static int ResultOf(Surroundings surroundings, Plan plan)
    {
        if (plan.MeetsWhatWasAsked)
            return ExitCode.Done;

        // The plan itself went to the output; whoever reads only the other stream must learn why it is not what was asked.
        surroundings.Out.Flush();
        foreach (var reason in plan.Reasons)
            surroundings.Complain(reason.ReplaceLineEndings(" "));
        return ExitCode.NoSuchPlan;
    }

    private static string CurrencyOf(Job job) => job.Prices?.Currency ?? JobDefaults.Currency;
}
