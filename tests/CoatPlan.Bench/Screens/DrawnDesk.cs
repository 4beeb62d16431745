using System.Collections.Concurrent;
using System.Diagnostics;
using CoatPlan.App;
using CoatPlan.App.Desk;
using CoatPlan.Tests.Screens;
using Terminal.Gui.Input;

namespace CoatPlan.Bench.Screens;

/// <summary>The terminal UI with a job on it, drawn into memory; plans are made on other threads, as in the program, and handed over between two frames.</summary>
internal sealed class DrawnDesk : IDisposable
{
    private readonly ConcurrentQueue<Action> handedOver = new();

    private readonly HeadlessUi ui;

    public DrawnDesk(string job, int width, int height)
    {
        ui = new HeadlessUi(JobFile.Unnamed(job), JobSource.Workshop(Sources.Usual), width, height, background: static work => Task.Run(work), foreground: handedOver.Enqueue);
        Frame();
    }

    /// <summary>Whether the newest change has no plan yet.</summary>
    public bool IsPlanning => ui.Desk.Planning;

    /// <summary>Whether no better plan is being looked for.</summary>
    public bool IsSettled => !ui.Desk.Planning && !ui.Desk.Improving;

    /// <summary>How long keys and what they drew kept the thread busy so far.</summary>
    public TimeSpan Busy { get; private set; }

    /// <summary>Takes a key and draws what follows.</summary>
    /// <param name="key">The key.</param>
    /// <returns>From the key to the drawn screen.</returns>
    public TimeSpan Press(Key key)
    {
        var (from, busy) = (Stopwatch.GetTimestamp(), ThreadTime.Now);
        ui.Press(key);
        var took = Stopwatch.GetElapsedTime(from);
        Busy += ThreadTime.Now - busy ?? took;
        return took;
    }

    /// <summary>Takes what was handed over since the last frame and draws.</summary>
    /// <returns>How long that took.</returns>
    public TimeSpan Frame()
    {
        var from = Stopwatch.GetTimestamp();
        // What is handed over meanwhile waits for the next frame, as in the program.
        for (var waiting = handedOver.Count; waiting > 0 && handedOver.TryDequeue(out var work); waiting--)
            work();
        ui.Draw();
        return Stopwatch.GetElapsedTime(from);
    }

    public void Dispose() => ui.Dispose();
}
