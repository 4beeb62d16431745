namespace CoatPlan.App.Desk;

/// <content>The hours.</content>
internal sealed partial class JobDesk
{
    private const int Closest = 3;

    private void DoAtTimeline(Word word)
    {
        switch (word)
        {
            case Word.ZoomIn:
                Zoom = Math.Min(Zoom + 1, Closest);
                break;
            case Word.ZoomOut:
                Zoom = Math.Max(Zoom - 1, 0);
                break;
            case Word.Left or Word.Right:
                StepAt = RowChoice.Moved(StepAt, word == Word.Left ? Word.Up : Word.Down, Plan?.Steps.Length ?? 0);
                break;
            case Word.Up or Word.Down:
                StepAt = FirstStepOfDay(word == Word.Up ? -1 : 1);
                break;
            default:
                ReadOrMoveAmongSteps(word);
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
