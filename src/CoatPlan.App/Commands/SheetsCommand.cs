using System.CommandLine;
using CoatPlan.Jobs;
using CoatPlan.Sheets.Pdf;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan sheets JOB --to DIR</c>: the plan on paper, each sheet as PDF and as text, its steps as a calendar, its lists as CSV.</summary>
internal static class SheetsCommand
{
    private const string Letter = "letter";

    private const string A4 = "a4";

    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    public static Command Of(Surroundings surroundings)
    {
        var command = new Command("sheets", "Write the sheets of a job, each as PDF and as text: masking & safety for the wall, work for the bench, the timeline, tags for what comes off, the shopping list, the quote, handouts for the stations of a class; all of them as one page for a phone, the steps as a calendar with alarms for phones, and the lists as CSV.");
        var job = Shared.JobArgument();
        var to = new Option<string>("--to") { Description = "Folder to write into; made where it does not exist", HelpName = "DIR", Required = true };
        var paper = new Option<string?>("--paper") { Description = "letter or a4; by the job's units unless said", HelpName = "SIZE" };
        paper.AcceptOnlyFromAmong(StringComparer.OrdinalIgnoreCase, Letter, A4);
        command.Add(job);
        command.Add(to);
        command.Add(paper);
        var sources = SourceOptions.AddedTo(command);
        command.SetAction(parsed =>
        {
            var opened = JobSource.Open(surroundings, parsed.GetRequiredValue(job), sources.Of(parsed));
            var plan = Planner.Plan(opened.Ready);
            var written = SheetFiles.Write(plan, parsed.GetRequiredValue(to), PaperOf(parsed.GetValue(paper), plan));
            foreach (var path in written.Paths)
                surroundings.Say(path);
            surroundings.Out.Flush();
            foreach (var warning in written.Warnings())
                surroundings.Complain(warning);
            return PlanCommand.ResultOf(surroundings, plan);
        });
        return command;
    }

    private static PaperSize PaperOf(string? asked, Plan plan) => asked?.ToUpperInvariant() switch
    {
        "A4" => PaperSize.A4,
        "LETTER" => PaperSize.Letter,
        _ => plan.Units == PrintUnits.Metric ? PaperSize.A4 : PaperSize.Letter,
    };
}
