using System.Globalization;
using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using NodaTime.Text;

namespace CoatPlan.App.Desk;

/// <content>When to start, how likely, what would change, and how figures came about: work that takes a while, and pages to read.</content>
internal sealed partial class JobDesk
{
    private static readonly LocalDateTimePattern AsWritten = LocalDateTimePattern.Create("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Work that takes a while; null where none is going on. It can be stopped by going back.</summary>
    public LongWork? Running { get; private set; }

    /// <summary>A page that is read; null where none is open.</summary>
    public TextPage? Page { get; private set; }

    private void LookForStarts() => Look("Trying the starts", workshop.When, (ready, starts) =>
    {
        if (starts.IsEmpty)
        {
            Show(new TextPage("When to start?", [new PageLine(PageLineKind.Warning, "! ", "From no start can the whole job be done: no opening of the crew's hours leaves the air, the windows and the time it needs.")]));
            return;
        }

        Picking = new Picker("When to start? The best first; what is picked becomes the job's start", [.. starts.Select(start => StartRow(ready.Job, start))], [],
            picked => picked is [var word] && starts.FirstOrDefault(start => Clock.Moment(start.Start) == word) is { } start ? TakeStart(ready.Job, start) : "nothing fits what was typed");
    });

    private string? TakeStart(Job job, StartTime start) =>
        TryField(JobPath.Root.Key(job.Done.IsEmpty ? "start" : "as-of"), JobValue.Of(AsWritten.Format(start.Start)));

    private static PickerRow StartRow(Job job, StartTime start)
    {
        var met = job.FinishBy is null ? "" : start.Meets ? ", as asked" : ", LATER than asked";
        var margin = start.LeastMarginC is { } least ? $"; metal at least {Written.TemperatureDifference(least, job.Units)} over the lowest that the dew point allows" : "";
        return new PickerRow(Clock.Moment(start.Start), $"finish {Clock.Moment(start.Finish)}{met}; {Written.Minutes(Math.Round(start.WaitH * 60))} of working hours without a step{margin}");
    }

    private void LookForChance() => Look("Carrying the plan out many times", workshop.Chance, (ready, chance) => Show(chance is null
        ? new TextPage("How likely is it done in time?", [new PageLine(PageLineKind.Warning, "! ", "The whole of the job cannot be placed; the sequence says why.")])
        : ChancePage.Of(chance, ready.Job.FinishBy)));

    private void AskWhatToCompare()
    {
        if (Reading.Ready is null)
        {
            Message = "the job holds mistakes; mend them first";
            return;
        }

        const string saved = "the file as saved";
        const string before = "before the last change";
        const string other = "another job file";
        Picking = new Picker("Compare what is here with what?",
            [
                new PickerRow(saved, "what the changes made since then come to"),
                .. edited.Undoable is { } what ? [new PickerRow(before, $"what this came to: {what}")] : Array.Empty<PickerRow>(),
                new PickerRow(other, "its name is typed"),
            ], [],
            picked => picked is not [var word] ? "nothing fits what was typed" : word == other ? AskForOther() : CompareWith(word, word == saved ? File.Text : edited.Before ?? Text, File.Path));
    }

    private string? AskForOther()
    {
        Ask("The other job file", "", typed =>
        {
            try
            {
                return CompareWith(System.IO.Path.GetFileName(typed.Trim()), TextFile.ReadJob(typed.Trim()).Text, typed.Trim());
            }
            catch (BadInputException exception)
            {
                return exception.Message;
            }
        });
        return null;
    }

    private string? CompareWith(string name, string text, string? path)
    {
        var reading = workshop.Read(text, name, path, null);
        if (reading.Ready is not { } first)
            return $"{name} holds mistakes: {Complaint.Of(reading.Problems)}";

        Look("Planning both", (second, progress, cancel) =>
        {
            var one = workshop.Plan(first, cancel).Plan;
            progress.Report(0.5);
            return PlanComparison.Of(name, one, "what is here", workshop.Plan(second, cancel).Plan);
        }, (ready, comparison) => Show(ComparisonPage.Of(comparison, ready.Job.Prices?.Currency ?? JobDefaults.Currency)));
        return null;
    }

    private void Explain()
    {
        if (live.Planned is not { } planned)
            Message = "no plan whose figures could be explained yet";
        else if (Page is not null)
            OfferFigures(planned);
        else
            ExplainFigure(planned, ChosenFigure.Of(this));
    }

    private void OfferFigures(PlannedJob from) =>
        Picking = new Picker("Which figure? Every one of the plan, by its place in the plan's JSON", [.. from.Figures().Select(path => new PickerRow(path, ""))], [],
            picked => picked is [var path] ? ExplainFigure(from, path) : "nothing fits what was typed");

    private string? ExplainFigure(PlannedJob from, string what)
    {
        var reading = from.Explain(what);
        if (reading.Explanation is { } explanation)
            Show(ExplanationPage.Of(explanation));
        else
            Message = $"no figure of the plan is called {what}";
        return null;
    }

    private void ReadTroubles()
    {
        if (Plan is { } plan)
            Show(TroublesPage.Of(plan));
        else
            Message = "no plan that could warn of anything yet";
    }

    private void Show(TextPage page) => (Page, ReadFrom) = (page, 0);

    private void ReadPage(Word word)
    {
        switch (word)
        {
            case Word.Back or Word.Enter:
                (Page, ReadFrom) = (null, 0);
                break;
            case Word.Explain:
                Explain();
                break;
            case Word.Quit:
                Quit();
                break;
            default:
                ReadOn(word);
                break;
        }
    }

    private void Look<T>(string name, Func<ReadyJob, IProgress<double>, CancellationToken, T> work, Action<ReadyJob, T> found)
    {
        if (Reading.Ready is not { } ready)
        {
            Message = "the job holds mistakes; mend them first";
            return;
        }

        var running = new LongWork(name);
        Running = running;
        running.Start<T>((progress, cancel) => work(ready, progress, cancel), background, foreground, () => Changed?.Invoke(), (answer, trouble) =>
        {
            Running = null;
            if (trouble is not null)
                Message = $"this could not be worked out: {trouble.Message.ReplaceLineEndings(" ")}";
            else
                found(ready, answer!);
            Changed?.Invoke();
        });
    }

    // Whoever waits can stop, and can leave the program; nothing else is taken meanwhile.
    private void WhileRunning(Word word)
    {
        if (word is Word.Back or Word.Quit)
            StopRunning();
        if (word is Word.Quit)
            Quit();
    }

    private void StopRunning()
    {
        Running!.Stop();
        (Running, Message) = (null, "stopped; nothing was changed");
    }
}
