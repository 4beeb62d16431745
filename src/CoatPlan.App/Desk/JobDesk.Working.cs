using CoatPlan.Quantities;
using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Plans;

namespace CoatPlan.App.Desk;

/// <content>Work that goes on, and the hours.</content>
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
            default:
                StepAt = Moved(StepAt, word, Plan?.Steps.Length ?? 0);
                break;
        }
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
        Ask("A note (nothing: none)", "", note => Try(StepTicks.Tick(Text, Job!, step, report with { Note = note }, read.GetValueOrDefault(step.Id)), $"tick of {step.Title}"));

    private void AskForReadings(PlanStep step)
    {
        if (step.Limits is not { } limits)
        {
            Message = $"{step.Title} has no limits of a label to compare with";
            return;
        }

        var units = Job?.Units ?? PrintUnits.Us;
        var example = $"{Written.Temperature(step.AirC, units)}, {Written.Temperature(step.SurfaceC, units)}, {Written.Percent(step.Humidity)}";
        Ask("Air, metal, humidity as read just now", example, typed =>
        {
            if (GoNoGo.Of(limits, typed, units) is not { } judged)
                return $"expected three readings with commas between, such as {example}";

            // What was read goes into the job with the tick of the step.
            read[step.Id] = typed;
            Judged = judged;
            return null;
        });
    }

    private void Ask(string asks, string typed, Func<string, string?> take) =>
        Typing = new LineEdit { Asks = asks, InCell = false, Typed = typed, Take = take };

    private void DoAtTimeline(Word word)
    {
        switch (word)
        {
            case Word.ZoomIn:
                Zoom = Math.Min(Zoom + 1, 3);
                break;
            case Word.ZoomOut:
                Zoom = Math.Max(Zoom - 1, 0);
                break;
            case Word.Left or Word.Right:
                StepAt = Moved(StepAt, word == Word.Left ? Word.Up : Word.Down, Plan?.Steps.Length ?? 0);
                break;
            case Word.Up or Word.Down:
                StepAt = FirstStepOfDay(word == Word.Up ? -1 : 1);
                break;
            default:
                StepAt = Moved(StepAt, word, Plan?.Steps.Length ?? 0);
                break;
        }
    }

    private int FirstStepOfDay(int direction)
    {
        if (Plan is not { } plan || Step is not { } step)
            return 0;

        var days = plan.Steps.Select(each => each.Start.Date).Distinct().Order().ToList();
        var day = days[Math.Clamp(days.IndexOf(step.Start.Date) + direction, 0, days.Count - 1)];
        return plan.Steps.IndexOf(plan.Steps.First(each => each.Start.Date == day));
    }
}
