using System.CommandLine;
using CoatPlan.App.Wording;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan when JOB</c>: the starts worth having, best first.</summary>
internal static class WhenCommand
{
    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    public static Command Of(Surroundings surroundings)
    {
        var command = new Command("when", "List the starts worth having in the job's weather and hours, best first, with finish, waiting and margin.");
        var job = Shared.JobArgument();
        var json = Shared.JsonOption("Print the starts as JSON, for scripts");
        command.Add(job);
        command.Add(json);
        var sources = SourceOptions.AddedTo(command);
        command.SetAction((parsed, cancel) => Task.FromResult(Run(
            surroundings,
            JobSource.Open(surroundings, parsed.GetRequiredValue(job), sources.Of(parsed)),
            parsed.GetValue(json),
            cancel)));
        return command;
    }

    private static int Run(Surroundings surroundings, OpenedJob opened, bool json, CancellationToken cancel)
    {
        var starts = StartTimes.Of(opened.Ready, new ProgressLine(surroundings, "starts tried"), cancel);
        if (json)
            surroundings.Out.Write(StartTimesJson.Write(starts));
        else
            Print(surroundings, opened, starts);
        if (starts.Any(start => start.Meets))
            return ExitCode.Done;

        surroundings.Out.Flush();
        surroundings.Error.WriteLine(starts.IsEmpty
            ? "From no start can the whole job be done: no opening of the crew's hours leaves the air, the windows and the time it needs."
            : $"No start finishes by {Clock.Moment(opened.Job.FinishBy!.Value)}; the earliest finish is {Clock.Moment(starts.Min(start => start.Finish))}.");
        return ExitCode.NoSuchPlan;
    }

    private static void Print(Surroundings surroundings, OpenedJob opened, ImmutableArray<StartTime> starts)
    {
        foreach (var line in Page.Of(TextStyle.Of(surroundings, opened.Job), page => Write(page, opened, starts)))
            surroundings.Out.WriteLine(line);
    }

    private static void Write(Page page, OpenedJob opened, ImmutableArray<StartTime> starts)
    {
        page.Title(opened.Job.Name);
        page.Field(opened.Job.Done.IsEmpty ? "To start" : "To go on", starts.IsEmpty ? "no start was found" : Written.Count(starts.Length, "start worth having", "starts worth having"));
        if (opened.Job.FinishBy is { } asked)
            page.Field("Asked for", $"finish by {Clock.Moment(asked)}");
        foreach (var start in starts)
        {
            page.Blank();
            page.Strong(Page.Indent, $"{Clock.Moment(start.Start)}  ", $"finish {Clock.Moment(start.Finish)}{Met(opened, start)}");
            page.Text(2 * Page.Indent, $"{Written.Minutes(Math.Round(start.WaitH * 60))} of working hours without a step{Margin(page, start)}");
        }
    }

    private static string Met(OpenedJob opened, StartTime start) => opened.Job.FinishBy is null ? "" : start.Meets ? ": met" : ": missed";

    private static string Margin(Page page, StartTime start) => start.LeastMarginC is { } margin
        ? $"; metal at least {Written.TemperatureDifference(margin, page.Style.Units)} over the lowest that the dew point allows"
        : "";
}
