namespace CoatPlan.App.Desk;

/// <summary>Work that takes a while, away from the person's keys: how far it is, and how it is stopped.</summary>
internal sealed class LongWork : IDisposable
{
    private const int Steps = 100;

    private readonly CancellationTokenSource cancel = new();

    private int percent;

    /// <summary>Work with a name.</summary>
    /// <param name="name">What is being done, in words.</param>
    public LongWork(string name) => Name = name;

    /// <summary>What is being done, in words.</summary>
    public string Name { get; }

    /// <summary>How far it is, 0 to 1.</summary>
    public double Share => Volatile.Read(ref percent) / (double)Steps;

    /// <summary>Whether the person stopped it.</summary>
    public bool IsStopped => cancel.IsCancellationRequested;

    /// <summary>Starts it.</summary>
    /// <typeparam name="T">What it finds.</typeparam>
    /// <param name="work">The work; it tells how far it is from any thread, and gives up where it is asked to.</param>
    /// <param name="background">Runs something away from the person's keys.</param>
    /// <param name="foreground">Runs something where the desk may be touched.</param>
    /// <param name="moved">Called in the foreground where it came a per cent farther.</param>
    /// <param name="done">Takes what was found, or what went wrong, in the foreground; not called where it was stopped.</param>
    public void Start<T>(
        Func<IProgress<double>, CancellationToken, T> work, Action<Action> background, Action<Action> foreground, Action moved, Action<T?, Exception?> done)
    {
        var progress = new Progress(this, () => foreground(moved));
        background(() =>
        {
            var (found, trouble) = Try(work, progress);
            foreground(() =>
            {
                if (!IsStopped)
                    done(found, trouble);
                Dispose();
            });
        });
    }

    /// <summary>Stops it; what it would have found is not told any more.</summary>
    public void Stop() => cancel.Cancel();

    /// <inheritdoc/>
    public void Dispose() => cancel.Dispose();

    private (T? Found, Exception? Trouble) Try<T>(Func<IProgress<double>, CancellationToken, T> work, Progress progress)
    {
        try
        {
            return (work(progress, cancel.Token), null);
        }
        catch (OperationCanceledException)
        {
            return (default, null);
        }
#pragma warning disable CA1031 // An exception on another thread would end the program and lose the person's work; the desk shows it instead.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            return (default, exception);
        }
    }

    // Reports come by the thousand and from several threads; only a new per cent is worth a frame.
    private sealed class Progress(LongWork owner, Action moved) : IProgress<double>
    {
        public void Report(double value)
        {
            var now = (int)(Math.Clamp(value, 0, 1) * Steps);
            var before = Volatile.Read(ref owner.percent);
            while (now > before)
            {
                var seen = Interlocked.CompareExchange(ref owner.percent, now, before);
                if (seen == before)
                {
                    moved();
                    return;
                }

                before = seen;
            }
        }
    }
}
