using CoatPlan.App;
using CoatPlan.App.Desk;
using CoatPlan.App.Screens;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace CoatPlan.Tests.Screens;

/// <summary>The real terminal UI without a terminal: keys in, text out.</summary>
internal sealed class HeadlessUi : IDisposable
{
    private readonly VirtualTimeProvider time = new();

    private readonly IApplication app;

    private readonly Workbench bench;

    private readonly SessionToken session;

    /// <summary>The UI with a job on it. Plans are made at once, unless something runs work elsewhere and hands it over.</summary>
    public HeadlessUi(JobFile file, Workshop workshop, int width = 80, int height = 24, Palette? palette = null, Action<Action>? background = null, Action<Action>? foreground = null)
    {
        app = Application.Create(time);
        app.Init("ansi");
        app.Driver!.SetScreenSize(width, height);
        Desk = new JobDesk(file, workshop, background ?? AtOnce, foreground ?? AtOnce);
        bench = new Workbench(Desk, palette ?? Palette.Colourless);
        session = app.Begin(bench)!;
        TerminalUi.KeepSafe(app, Desk);
        Draw();
    }

    public JobDesk Desk { get; }

    public string Screen
    {
        get
        {
            Draw();
            return app.Driver!.ToString()!;
        }
    }

    /// <summary>The screen as it is when all of it is drawn, whatever stood there.</summary>
    public string DrawnAnew
    {
        get
        {
            app.LayoutAndDraw(true);
            return app.Driver!.ToString()!;
        }
    }

    /// <summary>The screen with blanks at line ends left out, as it is kept in docs.</summary>
    public string Picture => string.Join('\n', Screen.Split('\n').Select(line => line.TrimEnd())).TrimEnd() + "\n";

    public string Ansi
    {
        get
        {
            Draw();
            return app.Driver!.ToAnsi();
        }
    }

    public void Press(params Key[] keys)
    {
        foreach (var key in keys)
        {
            app.InjectKey(key);
            Draw();
        }
    }

    public void Type(string text) => Press([.. text.Select(character => new Key(character))]);

    /// <summary>Clicks, once or twice, at a point of the screen.</summary>
    public void Click(int x, int y, bool twice = false) => Point(x, y, twice ? MouseFlags.LeftButtonDoubleClicked : MouseFlags.LeftButtonClicked);

    /// <summary>Turns the wheel.</summary>
    public void Wheel(bool down) => Point(40, 10, down ? MouseFlags.WheeledDown : MouseFlags.WheeledUp);

    private void Point(int x, int y, MouseFlags flags)
    {
        bench.NewMouseEvent(new Mouse { Position = new System.Drawing.Point(x, y), Flags = flags });
        Draw();
    }

    /// <summary>Lets what was put off happen.</summary>
    public void Idle()
    {
        app.RaiseIteration();
        app.TimedEvents?.RunTimers();
        Draw();
    }

    /// <summary>Lets time pass, and what is due happen.</summary>
    public void Wait(TimeSpan duration)
    {
        time.Advance(duration);
        Idle();
    }

    public void Resize(int width, int height)
    {
        app.Driver!.SetScreenSize(width, height);
        Draw();
    }

    public void Dispose()
    {
        app.End(session);
        bench.Dispose();
        app.Dispose();
    }

    /// <summary>Draws as the program does: what stands on the screen already may stay there.</summary>
    public void Draw() => app.LayoutAndDraw();

    private static void AtOnce(Action work) => work();
}
