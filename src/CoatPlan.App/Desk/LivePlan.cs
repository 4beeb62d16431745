using CoatPlan.Sheets.Content;

namespace CoatPlan.App.Desk;

/// <summary>The newest plan of a job that is being changed, made away from the person's keys: what a change comes to is sketched at once, the best plan follows when it is found.</summary>
internal sealed class LivePlan
{
    private readonly Workshop workshop;

    private readonly Action<Action> foreground;

    private readonly Replanner sketcher;

    private readonly Replanner planner;

    private readonly Action<Plan?> shown;

    // What was sketched and is not looked at any further yet.
    private ReadyJob? toImprove;

    // Made when they are first looked at; a plan has many pages.
    private ImmutableArray<Sheet>? sheets;

    /// <summary>No plan yet.</summary>
    /// <param name="workshop">Plans jobs.</param>
    /// <param name="background">Runs something away from the person's keys; tests run it at once.</param>
    /// <param name="foreground">Runs something where the desk may be touched.</param>
    /// <param name="shown">Told when there is another plan, or none could be made; given the plan before.</param>
    public LivePlan(Workshop workshop, Action<Action> background, Action<Action> foreground, Action<Plan?> shown)
    {
        (this.workshop, this.foreground) = (workshop, foreground);
        sketcher = new Replanner(background, foreground);
        planner = new Replanner(background, foreground);
        this.shown = shown;
    }

    /// <summary>The newest plan with its workings; that of an earlier text while <see cref="Planning"/>, null where there never was one.</summary>
    public PlannedJob? Planned { get; private set; }

    /// <summary>The newest plan; null where there never was one.</summary>
    public Plan? Plan => Planned?.Plan;

    /// <summary>Whether a plan of the newest text is being made.</summary>
    public bool Planning => sketcher.Busy;

    /// <summary>Whether the newest plan is still being made better.</summary>
    public bool Improving => planner.Busy || toImprove is not null;

    /// <summary>Why the newest text could not be planned, where that is an error of the program; null otherwise.</summary>
    public string? Trouble { get; private set; }

    /// <summary>The sheets of the newest plan; empty where there is none.</summary>
    public ImmutableArray<Sheet> Sheets => sheets ??= Plan is { } plan ? SheetSet.Of(plan) : [];

    /// <summary>Has a job planned; of several, the newest wins.</summary>
    /// <param name="job">The job; null where its text holds mistakes, which leaves the plan as it was.</param>
    public void Want(ReadyJob? job)
    {
        toImprove = null;
        planner.Cancel();
        if (job is null)
        {
            sketcher.Cancel();
            return;
        }

        var before = Plan;
        sketcher.Want(_ => workshop.Sketch(job, before), (made, trouble) =>
        {
            toImprove = trouble is null ? job : null;
            Show(made, trouble);
            // The search takes every core; what was sketched is drawn before it begins.
            foreground(() => Improve(job));
        });
    }

    // By then something else may be wanted.
    private void Improve(ReadyJob job)
    {
        if (!ReferenceEquals(job, toImprove))
            return;

        toImprove = null;
        planner.Want(cancel => workshop.Plan(job, cancel), Show);
    }

    private void Show(PlannedJob? made, Exception? trouble)
    {
        var before = Plan;
        (Planned, sheets) = (made ?? Planned, null);
        Trouble = trouble?.Message;
        shown(before);
    }
}
