using System.CommandLine;
using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Quantities;
using CoatPlan.Sheets.Text;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan done JOB STEP --at … --took …</c>: writes a step that is done into the job file, and says what that moves.</summary>
internal static class DoneCommand
{
    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    public static Command Of(Surroundings surroundings)
    {
        var command = new Command("done", "Write into the job file that a step is done, so that the rest is planned anew; nothing else in the file changes.");
        var job = new Argument<string>("JOB") { Description = "Job file" };
        job.Validators.Add(Shared.RefuseOption);
        var step = new Argument<string>("STEP") { Description = "Id of a step, as coatplan plan JOB --json gives it" };
        var at = new Option<string>("--at") { Description = "When it ended: a time, or a date and a time", HelpName = "TIME", Required = true };
        var took = new Option<string?>("--took") { Description = "Hands-on time it took, such as \"50 min\"; as planned unless said", HelpName = "TIME" };
        var cans = new Option<string?>("--cans") { Description = "Cans it used, such as 1.5, or the mass or volume left", HelpName = "N" };
        var note = new Option<string?>("--note") { Description = "A note for later", HelpName = "TEXT" };
        var asOf = new Option<string?>("--as-of")
        {
            Description = "Plan nothing undone before this time; without a time: before the step's end",
            HelpName = "TIME",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var json = Shared.JsonOption("Print what changed as JSON, for scripts");
        command.Add(job);
        command.Add(step);
        foreach (var option in new Option[] { at, took, cans, note, asOf, json })
            command.Add(option);
        var sources = SourceOptions.AddedTo(command);
        command.SetAction(parsed => Run(
            surroundings,
            parsed.GetRequiredValue(job),
            new Asked(
                parsed.GetRequiredValue(step),
                parsed.GetRequiredValue(at),
                parsed.GetValue(took),
                parsed.GetValue(cans),
                parsed.GetValue(note),
                parsed.GetResult(asOf) is null ? null : parsed.GetValue(asOf) ?? ""),
            parsed.GetValue(json),
            sources.Of(parsed)));
        return command;
    }

    private static int Run(Surroundings surroundings, string path, Asked asked, bool json, Sources sources)
    {
        if (path == "-")
            throw new BadInputException("coatplan: done writes into the job file; expected its name, not -");

        var file = TextFile.ReadJob(path);
        var workshop = JobSource.Workshop(sources);
        var before = Read(workshop, file.Text, path);
        var plan = workshop.Plan(before, CancellationToken.None).Plan;
        var step = StepOf(plan, asked.Step);
        var edited = DoneSteps.Record(file.Text, before.Job, step, ReportOf(asked, step));
        var text = edited.Text ?? throw new BadInputException([.. edited.Problems.Select(problem => (problem with { File = path }).ToString())]);
        var after = workshop.Plan(Read(workshop, text, path), CancellationToken.None).Plan;
        Write(path, file, text);

        var change = PlanChange.Between(step, plan, after);
        if (json)
            surroundings.Out.Write(PlanChangeJson.Write(change));
        else
            Print(surroundings, path, change);
        return PlanCommand.ResultOf(surroundings, after);
    }

    private static ReadyJob Read(Workshop workshop, string text, string path)
    {
        var reading = workshop.Read(text, path, path, null);
        return reading.Ready ?? throw new BadInputException([.. reading.Problems.Select(problem => problem.ToString())]);
    }

    private static PlanStep StepOf(Plan plan, string id)
    {
        if (plan.Steps.FirstOrDefault(step => step.Id == id) is not { } step)
        {
            var near = DoneSteps.Near(plan, id);
            var guess = near.IsEmpty ? "" : $"; did you mean {string.Join(", ", near)}?";
            throw new BadInputException($"coatplan: '{id}' is no step of this plan, expected an id such as {plan.Steps.FirstOrDefault()?.Id ?? "mask"}{guess}");
        }

        return step.Done ? throw new BadInputException($"coatplan: '{id}' is done already, at {Clock.Moment(step.End)}; its entry stands under done in the job file") : step;
    }

    private static StepReport ReportOf(Asked asked, PlanStep step)
    {
        var ended = TimeOf("--at", asked.At, step);
        if (asked.Took is { } took && !QuantityText.Duration(took).Ok)
            throw new BadInputException($"coatplan: --took: '{took}' is no length of time; expected one such as \"50 min\"");

        return new StepReport
        {
            Ended = ended,
            Took = asked.Took,
            Cans = asked.Cans,
            Note = asked.Note,
            AsOf = asked.AsOf switch
            {
                null => null,
                "" => ended,
                { } typed => TimeOf("--as-of", typed, step),
            },
        };
    }

    private static LocalDateTime TimeOf(string option, string typed, PlanStep step) =>
        DoneSteps.TimeOf(typed, step.End.Date)
        ?? throw new BadInputException($"coatplan: {option}: '{typed}' is no time; expected one such as {Clock.Time(step.End)} or \"2027-05-15 14:20\"");

    // Whoever saved the file while it was planned here keeps what they wrote.
    private static void Write(string path, JobText read, string text)
    {
        if (TextFile.ReadJob(path).Text != read.Text)
            throw new BadInputException($"{path}: was changed by somebody else in the meantime; nothing was written");

        try
        {
            AtomicFile.Write(path, read.ToBytes(text).AsSpan());
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw WriteFailure.Of(path, exception);
        }
    }

    private static void Print(Surroundings surroundings, string path, PlanChange change)
    {
        var width = Math.Max(surroundings.Width, TextStyle.Narrowest);
        Say($"{path}: “{change.Title}” is done{(change.Stations is { } stations ? $"; the entry speaks of the work, not of a station, so it is done at all {Written.Count(stations, "station", "stations")}" : "")}");
        Say($"finish: {Moment(change.FinishBefore)} before, {Moment(change.FinishAfter)} now{Shift(change)}");
        foreach (var title in change.Added)
            Say($"more to do: “{title}”");
        foreach (var title in change.Dropped)
            Say($"no longer to do: “{title}”");

        void Say(string text)
        {
            foreach (var line in Wrapping.Hanging("", text, width))
                surroundings.Out.WriteLine(line);
        }
    }

    private static string Moment(LocalDateTime? at) => at is { } known ? Clock.Moment(known) : "no finish";

    private static string Shift(PlanChange change) => change.FinishMovesMin switch
    {
        null => "",
        0 => "; it stays",
        > 0 and var later => $"; {Written.Minutes(later)} later",
        var earlier => $"; {Written.Minutes(-earlier.Value)} earlier",
    };

    /// <summary>What a person typed.</summary>
    private sealed record Asked(string Step, string At, string? Took, string? Cans, string? Note, string? AsOf);
}
