using System.CommandLine;
using System.Globalization;
using CoatPlan.App.Wording;
using CoatPlan.Outlook;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan chance JOB</c>: how likely the job is done in time, what costs the most, and what would help.</summary>
internal static class ChanceCommand
{
    private const int MostCostly = 6;

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
            page.Field("In time", $"{Written.Percent(meets)} of {chance.Draws.ToString("#,##0", CultureInfo.InvariantCulture)} draws finish by {Clock.Moment(asked)}");
        page.Field("Even odds", Moment(chance.Finish50));
        page.Field("9 of 10", Moment(chance.Finish90));

        page.Heading("What costs the most");
        if (chance.Costly.IsEmpty)
            page.Bullet("-", "Nothing moves the finish by a minute on the average.");
        foreach (var cost in chance.Costly.Take(MostCostly))
            page.Bullet("-", $"{cost.What}: {Written.Minutes(Math.Round(cost.Minutes))} on the average");

        if (!chance.Buys.IsEmpty)
            page.Heading("What would help");
        foreach (var buy in chance.Helping)
            page.Bullet("-", $"With {buy.What}: {(buy.Meets is { } share ? $"{Written.Percent(share)} in time, " : "")}even odds {Moment(buy.Finish50)}");
        if (!chance.Idle.IsEmpty)
            page.Bullet("-", $"Tried, and changing nothing for the better: {string.Join("; ", chance.Idle.Select(buy => buy.What))}");

        page.Heading("Cans");
        foreach (var cans in chance.Cans)
            page.Bullet("-", $"{cans.Product}: {Written.Count(cans.Cans, "can is", "cans are")} enough in {Written.Percent(cans.Share)} of draws");
    }

    private static string Moment(LocalDateTime? at) => at is { } known ? Clock.Moment(known) : "not within 60 days";
}
