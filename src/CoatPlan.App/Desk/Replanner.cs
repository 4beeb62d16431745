namespace CoatPlan.App.Desk;

/// <summary>Makes the newest plan asked for in the background. While one is made, only the newest of those that are asked for waits; the others are never made.</summary>
/// <remarks>What is forgotten ends early where it listens to its token: it would take time from the plan that a person waits for.</remarks>
/// <param name="background">Runs something away from the person's keys.</param>
/// <param name="foreground">Runs something where the desk may be touched.</param>
internal sealed class Replanner(Action<Action> background, Action<Action> foreground)
{
    private Request? waiting;

    private Action? stop;

    private bool running;

    /// <summary>Whether a plan is being made.</summary>
    public bool Busy => running;

    /// <summary>Asks for a plan.</summary>
    /// <param name="plan">Makes it; runs in the background, and is cancelled when it is forgotten.</param>
    /// <param name="done">Takes the plan, or what went wrong, in the foreground; not called where a newer plan was asked for before.</param>
    public void Want(Func<CancellationToken, PlannedJob> plan, Action<PlannedJob?, Exception?> done)
    {
        waiting = new Request(plan, done);
        if (!running)
            Start();
    }

    /// <summary>Forgets the plan that waits, and the answer that is being made.</summary>
    public void Cancel()
    {
        waiting = new Request(null, static (_, _) => { });
        stop?.Invoke();
    }

    private void Start()
    {
        var request = waiting!;
        waiting = null;
        if (request.Plan is not { } plan)
            return;

        running = true;
        var cancel = new CancellationTokenSource();
        stop = cancel.Cancel;
        background(() =>
        {
            var (planned, trouble) = Make(plan, cancel.Token);
            foreground(() =>
            {
                stop = null;
                cancel.Dispose();
                Finish(request, planned, trouble);
            });
        });
    }

    private void Finish(Request request, PlannedJob? planned, Exception? trouble)
    {
        running = false;
        if (waiting is null)
            request.Done(planned, trouble);
        else
            Start();
    }

    private static (PlannedJob? Plan, Exception? Trouble) Make(Func<CancellationToken, PlannedJob> plan, CancellationToken cancel)
    {
        try
        {
            return (plan(cancel), null);
        }
#pragma warning disable CA1031 // An exception on another thread would end the program and lose the person's work; the desk shows it instead.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            return (null, exception);
        }
    }

    private sealed record Request(Func<CancellationToken, PlannedJob>? Plan, Action<PlannedJob?, Exception?> Done);
}
