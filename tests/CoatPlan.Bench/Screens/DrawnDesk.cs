using System.Collections.Concurrent;
using System.Diagnostics;
using CoatPlan.App;
using CoatPlan.App.Desk;
using CoatPlan.App.Screens;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace CoatPlan.Bench.Screens;

/// <summary>The terminal UI with a job on it, drawn into memory; plans are made on other threads, as in the program, and handed over between two frames.</summary>
internal sealed class DrawnDesk : IDisposable
{
    private readonly ConcurrentQueue<Action> handedOver = new();

    private readonly IApplication app;

    private readonly JobDesk desk;

    private readonly Workbench bench;

    private readonly SessionToken session;

    public DrawnDesk(string job, int width, int height)
    {
        app = Application.Create(new VirtualTimeProvider());
        app.Init("ansi");
        app.Driver!.SetScreenSize(width, height);
        desk = new JobDesk(JobFile.Unnamed(job), JobSource.Workshop(Sources.Usual), static work => Task.Run(work), handedOver.Enqueue);
        bench = new Workbench(desk, Palette.Colourless);
        session = app.Begin(bench)!;
        Frame();
    }

    /// <summary>Whether the newest change has no plan yet.</summary>
    public bool IsPlanning => desk.Planning;

    /// <summary>Whether no better plan is being looked for.</summary>
    public bool IsSettled => !desk.Planning && !desk.Improving;

    /// <summary>How long keys and what they drew kept the thread busy so far.</summary>
    public TimeSpan Busy { get; private set; }

    /// <summary>Takes a key and draws what follows.</summary>
    /// <param name="key">The key.</param>
    /// <returns>From the key to the drawn screen.</returns>
    public TimeSpan Press(Key key)
    {
        var (from, busy) = (Stopwatch.GetTimestamp(), ThreadTime.Now);
        app.InjectKey(key);
        app.LayoutAndDraw();
        var took = Stopwatch.GetElapsedTime(from);
        Busy += ThreadTime.Now - busy ?? took;
        return took;
    }

    /// <summary>Takes what was handed over since the last frame and draws.</summary>
    /// <returns>How long that took.</returns>
    public TimeSpan Frame()
    {
        var from = Stopwatch.GetTimestamp();
        while (handedOver.TryDequeue(out var work))
            work();
        app.LayoutAndDraw();
        return Stopwatch.GetElapsedTime(from);
    }

    public void Dispose()
    {
        app.End(session);
        bench.Dispose();
        app.Dispose();
    }
}
