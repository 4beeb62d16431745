using System.CommandLine;
using System.Globalization;
using CoatPlan.App.Wording;
using CoatPlan.Outlook;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan chance JOB</c>: how likely the job is done in time, what costs the most, and what would help.</summary>
internal static class ChanceCommand
{
    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    public static Command Of(Surroundings surroundings)
    {
        var command = new Command("chance", "Draw hands, drying and weather many times, carry the plan out in each, and say how likely it is done in time.");
        var job = Shared.JobArgument();
        var draws = DrawsOption();
        var json = Shared.JsonOption("Print the chance as JSON, for scripts");
        command.Add(job);
        command.Add(draws);
        command.Add(json);
        var sources = SourceOptions.AddedTo(command);
        command.SetAction((parsed, cancel) => Task.FromResult(Run(
            surroundings,
            JobSource.Open(surroundings, parsed.GetRequiredValue(job), sources.Of(parsed)),
            new ChanceAsked { Draws = parsed.GetValue(draws) ?? ChanceAsked.UsualDraws, Threads = Environment.ProcessorCount },
            parsed.GetValue(json),
            cancel)));
        return command;
    }

    private static Option<int?> DrawsOption() => new("--draws")
    {
        Description = string.Create(CultureInfo.InvariantCulture, $"How many draws, 1 to {ChanceAsked.MostDraws}; {ChanceAsked.UsualDraws} unless said"),
        HelpName = "N",
        CustomParser = static result =>
        {
            var typed = result.Tokens.Count == 1 ? result.Tokens[0].Value : "";
            if (int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= ChanceAsked.MostDraws)
                return count;

            result.AddError(string.Create(CultureInfo.InvariantCulture, $"--draws: '{typed}' is no number of draws; expected a whole number from 1 to {ChanceAsked.MostDraws}"));
            return null;
        },
    };

    private static int Run(Surroundings surroundings, OpenedJob opened, ChanceAsked asked, bool json, CancellationToken cancel)
    {
        if (Chances.Of(opened.Ready, asked, new ProgressLine(surroundings, "draws"), cancel) is not { } chance)
        {
            foreach (var reason in Planner.Plan(opened.Ready, cancel: cancel).Reasons)
                surroundings.Complain(reason.ReplaceLineEndings(" "));
            return ExitCode.NoSuchPlan;
        }

        if (json)
        {
            surroundings.Out.Write(ChanceJson.Write(chance));
            return ExitCode.Done;
        }

        foreach (var line in Page.Of(TextStyle.Of(surroundings, opened.Job), page => Write(page, opened, chance)))
            surroundings.Out.WriteLine(line);
        return ExitCode.Done;
    }

    private static void Write(Page page, OpenedJob opened, Chance chance)
    {
        page.Title(opened.Job.Name);
        page.Field("Planned", Clock.Moment(chance.Planned));
        if (chance.Meets is { } meets && opened.Job.FinishBy is { } asked)
            page.Field("In time", ChanceWords.InTime(meets, chance.Draws, asked));
        page.Field("Even odds", ChanceWords.Finish(chance.Finish50));
        page.Field("9 of 10", ChanceWords.Finish(chance.Finish90));

        page.Heading("What costs the most");
        List(ChanceWords.Costs(chance));

        if (!chance.Buys.IsEmpty)
            page.Heading("What would help");
        List(ChanceWords.Helps(chance));

        page.Heading("Cans");
        List(ChanceWords.Cans(chance));

        void List(IEnumerable<string> sentences)
        {
            foreach (var sentence in sentences)
                page.Bullet("-", sentence);
        }
    }
}
