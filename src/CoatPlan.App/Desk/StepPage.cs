using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Plans;

namespace CoatPlan.App.Desk;

/// <summary>Everything about a step, as a page: why it is, what it waits for, how late it may be, its air and its limits.</summary>
internal static class StepPage
{
    /// <summary>The page of a step.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="step">A step of it.</param>
    /// <param name="units">The job's units.</param>
    public static TextPage Of(Plan plan, PlanStep step, PrintUnits units)
    {
        var lines = ImmutableArray.CreateBuilder<PageLine>();
        Say("why     ", step.Why);
        foreach (var wait in Sentences.WaitsOf(plan, step))
            Say("waits   ", wait);
        if (step.WaitsFor.Length > 0)
            Say("timing  ", step.WaitsFor);
        foreach (var note in step.Notes)
            Say("mind    ", note);
        if (step.LastSafeStart is { } last)
            Say("latest  ", $"last safe start {Clock.MomentSeenFrom(last, step.Start.Date)}{Sentences.Then(step)}");
        if (!step.Done)
            Say("slack   ", Sentences.SlackOf(step));
        foreach (var idle in plan.Idle.Where(idle => idle.To == step.Start && idle.Station == step.Station))
            Say("idle    ", Sentences.IdleOf(idle));
        if (plan.RestPoints.Any(point => point.After == step.Id))
            Say("rest    ", "after this step the whole job can rest a week without rework");
        Say("air     ", Sentences.AirOf(step, units));
        if (step.Limits is { } limits)
            Say("limits  ", Sentences.LimitsOf(limits, units));
        return new TextPage(Sentences.Named(plan, step), lines.ToImmutable());

        void Say(string lead, string text) => lines.Add(new PageLine(PageLineKind.Text, lead, text));
    }
}
