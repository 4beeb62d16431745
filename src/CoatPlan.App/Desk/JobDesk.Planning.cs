namespace CoatPlan.App.Desk;

/// <content>The newest plan, made away from the person's keys.</content>
internal sealed partial class JobDesk
{
    private void Replan()
    {
        replanner.Cancel();
        if (Reading.Ready is not { } ready)
        {
            sketcher.Cancel();
            return;
        }

        // The effect of a change is shown at once; the best plan follows when it is found.
        sketcher.Want(ready, (plan, trouble) =>
        {
            Show(plan, trouble);
            if (trouble is null)
                replanner.Want(ready, Show);
        });
    }

    // Steps move when the plan changes; the choice stays with the step, not with its row.
    private void ChooseStep(string? id)
    {
        if (id is not null && Plan is { } plan && plan.Steps.FirstOrDefault(step => step.Id == id) is { } step)
            StepAt = plan.Steps.IndexOf(step);
    }

    private void Show(PlannedJob? made, Exception? trouble)
    {
        var chosen = Step?.Id;
        (planned, sheets) = (made ?? planned, null);
        ChooseStep(chosen);
        Trouble = trouble?.Message;
        KeepInside();
        Changed?.Invoke();
    }
}
