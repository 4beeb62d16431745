namespace CoatPlan.App.Desk;

/// <summary>Plans the newest job in the background. While one plan is made, only the newest of the jobs that arrive waits; the others are never planned.</summary>
/// <param name="plan">Makes a plan; runs in the background.</param>
/// <param name="background">Runs something away from the person's keys.</param>
/// <param name="foreground">Runs something where the desk may be touched.</param>
internal sealed class Replanner(Func<ReadyJob, PlannedJob> plan, Action<Action> background, Action<Action> foreground)
{
    private Request? waiting;

    private bool running;

    /// <summary>Whether a plan is being made.</summary>
    public bool Busy => running;

    /// <summary>Asks for the plan of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="done">Takes the plan, or what went wrong, in the foreground; not called where a newer job arrived before.</param>
    public void Want(ReadyJob job, Action<PlannedJob?, Exception?> done)
    {
        waiting = new Request(job, done);
        if (!running)
            Start();
    }

    /// <summary>Forgets the job that waits, and the answer that is being made.</summary>
    public void Cancel() => waiting = new Request(null, static (_, _) => { });

    private void Start()
    {
        var request = waiting!;
        waiting = null;
        if (request.Job is not { } job)
            return;

        running = true;
        background(() =>
        {
            var (made, trouble) = Make(job);
            foreground(() => Finish(request, made, trouble));
        });
    }

    private void Finish(Request request, PlannedJob? made, Exception? trouble)
    {
        running = false;
        if (waiting is null)
            request.Done(made, trouble);
        else
            Start();
    }

    private (PlannedJob? Plan, Exception? Trouble) Make(ReadyJob job)
    {
        try
        {
            return (plan(job), null);
        }
#pragma warning disable CA1031 // An exception on another thread would end the program and lose the person's work; the desk shows it instead.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            return (null, exception);
        }
    }

    private sealed record Request(ReadyJob? Job, Action<PlannedJob?, Exception?> Done);
}
