using CoatPlan.App.Desk;
using Terminal.Gui.App;

namespace CoatPlan.App.Screens;

/// <summary>Runs the terminal UI on a desk until the person leaves.</summary>
internal static class TerminalUi
{
    private static readonly TimeSpan SafeEvery = TimeSpan.FromSeconds(2);

    /// <summary>Runs it on this machine's terminal.</summary>
    /// <param name="surroundings">What it may reach.</param>
    /// <param name="file">The job's file.</param>
    /// <param name="workshop">Reads jobs and plans them.</param>
    /// <param name="guideFrom">When work could begin where the job is built by asking; null where it is not.</param>
    public static void Run(Surroundings surroundings, JobFile file, Workshop workshop, LocalDateTime? guideFrom)
    {
        using var app = Application.Create();
        app.Init();
        var desk = new JobDesk(file, workshop, work => Task.Run(work), work => app.Invoke(work));
        using var bench = new Workbench(desk, surroundings.NoColour ? Palette.Colourless : Palette.Coloured);
        if (guideFrom is { } start)
            desk.Guide(start);
        KeepSafe(app, desk);
        app.Run(bench);
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
