using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Quantities;

namespace CoatPlan.App.Desk;

/// <content>Work that goes on: steps that are done, readings before a coat.</content>
internal sealed partial class JobDesk
{
    private readonly Dictionary<string, string> read = new(StringComparer.Ordinal);

    private void DoAtSequence(Word word)
    {
        switch (word)
        {
            case Word.Mark when Step is { } step:
                AskWhenDone(step);
                break;
            case Word.Judge when Step is { } step:
                AskForReadings(step);
                break;
            case Word.Left or Word.Right:
                ChooseStation(word);
                break;
            default:
                ReadOrMoveAmongSteps(word);
                break;
        }
    }

    private void ReadOrMoveAmongSteps(Word word)
    {
        if (word == Word.Enter && Step is { } step)
            Show(StepPage.Of(Plan!, step, Job?.Units ?? PrintUnits.Us));
        else
            MoveAmongSteps(word);
    }

    // Time, cans and note are asked one after the other; nothing is written before the last.
    private void AskWhenDone(PlanStep step)
    {
        if (step.Done)
        {
            Message = $"{step.Title} is ticked already; undo or the fields take it back";
            return;
        }

        Ask($"{step.Title}: when did it end? A time, or a date and a time", Clock.Time(step.End), typed =>
        {
            if (StepTicks.TimeOf(typed, step.End.Date) is not { } ended)
                return $"'{typed}' is no time; expected one such as {Clock.Time(step.End)} or 2027-05-15 14:20";

            Ask("Hands-on time it took, such as 50 min (nothing: as planned)", "", took =>
            {
                if (took.Trim().Length > 0 && !QuantityText.Duration(took).Ok)
                    return $"'{took}' is no length of time; expected one such as 50 min";

                AskForCans(step, new StepReport { Ended = ended, Took = took.Trim().Length > 0 ? took.Trim() : null });
                return null;
            });
            return null;
        });
    }

    private void AskForCans(PlanStep step, StepReport report)
    {
        if (step.Coat is null)
        {
            AskForNote(step, report);
            return;
        }

        Ask("Cans it used, such as 1.5 (nothing: as planned)", "", cans =>
        {
            AskForNote(step, report with { Cans = cans });
            return null;
        });
    }

    private void AskForNote(PlanStep step, StepReport report) =>
        Ask("A note (nothing: none)", "", note => Tick(step, report with { Note = note }));

    // The next step to do of those that are listed is chosen, so that one tick can follow another.
    private string? Tick(PlanStep step, StepReport report)
    {
        var next = Plan?.Steps.SkipWhile(each => each.Id != step.Id).FirstOrDefault(each => !each.Done && each.Id != step.Id && Lists(each))?.Id;
        var refused = Try(StepTicks.Tick(edited.Document, Job!, step, report, read.GetValueOrDefault(step.Id)), $"tick of {step.Title}");
        if (refused is not null)
            return refused;

        ChooseStep(next);
        Message = $"ticked: {step.Title}; undo takes it back";
        return null;
    }

    private void AskForReadings(PlanStep step)
    {
        if (step.Limits is not { } limits)
        {
            Message = "no label limits this step: choose a coat, marked with *";
            return;
        }

        var units = Job?.Units ?? PrintUnits.Us;
        var example = $"{Written.Temperature(step.AirC, units)}, {Written.Temperature(step.SurfaceC, units)}, {Written.Percent(step.Humidity)}";
        Ask($"Air, metal and humidity as read just now, such as {example}", "", typed =>
        {
            if (GoNoGo.Of(limits, typed, units) is not { } judged)
                return $"expected three readings with their units and commas between, such as {example}";

            // What was read goes into the job with the tick of the step.
            read[step.Id] = typed;
            Judged = judged;
            return null;
        });
    }

    private void Ask(string asks, string typed, Func<string, string?> take) =>
        Typing = new LineEdit { Asks = asks, InCell = false, Typed = typed, Take = take };
}
