using CoatPlan.App.Desk;
using Terminal.Gui.App;

namespace CoatPlan.App.Screens;

/// <summary>Runs the terminal UI on a desk until the person leaves.</summary>
internal static class TerminalUi
{
    // One for each frame of a usual screen. The toolkit looks for keys 25 times a second unless told, and a key is then answered up to 40 ms later.
    private const ushort FramesPerSecond = 60;

    // A plan that is about to be made is not left waiting for a frame; at rest that would cost a tenth of a core.
    private const ushort FramesPerSecondWhilePlanning = 250;

    private static readonly TimeSpan SafeEvery = TimeSpan.FromSeconds(2);

    /// <summary>Runs it on this machine's terminal.</summary>
    /// <param name="surroundings">What it may reach.</param>
    /// <param name="file">The job's file.</param>
    /// <param name="workshop">Reads jobs and plans them.</param>
    /// <param name="guideFrom">When work could begin where the job is built by asking; null where it is not.</param>
    public static void Run(Surroundings surroundings, JobFile file, Workshop workshop, LocalDateTime? guideFrom)
    {
        Application.MaximumIterationsPerSecond = FramesPerSecond;
        using var app = Application.Create();
        app.Init();
        var desk = new JobDesk(file, workshop, work => Task.Run(work), work => app.Invoke(() => AndDraw(app, work)));
        using var bench = new Workbench(desk, surroundings.NoColour ? Palette.Colourless : Palette.Coloured);
        if (guideFrom is { } start)
            desk.Guide(start);
        KeepSafe(app, desk);
        desk.Changed += () => Application.MaximumIterationsPerSecond = desk.Planning ? FramesPerSecondWhilePlanning : FramesPerSecond;
        app.Run(bench);
    }

    // The toolkit draws before it runs what was handed over, and would show it a frame later.
    private static void AndDraw(IApplication app, Action work)
    {
        work();
        app.LayoutAndDraw();
    }

    /// <summary>Has unsaved work kept every two seconds for the case that the program is killed.</summary>
    /// <param name="app">What runs.</param>
    /// <param name="desk">The work.</param>
    public static void KeepSafe(IApplication app, JobDesk desk) => app.AddTimeout(SafeEvery, () =>
    {
        desk.KeepSafe();
        return true;
    });
}
