using System.Diagnostics;
using System.Globalization;
using CoatPlan.Bench.Speed;
using Terminal.Gui.Input;

namespace CoatPlan.Bench.Screens;

/// <summary>Measures what a person at the screen feels: how long a key takes to show while plans are made, and how long an edit takes to show its plan.</summary>
public static class ScreenRun
{
    private const double FrameMilliseconds = 16;

    private const int EditsToWarmUp = 3;

    private const int Edits = 20;

    private static readonly TimeSpan BetweenKeys = TimeSpan.FromMilliseconds(30);

    // Time enough for the search for the best plan to be well under way.
    private static readonly TimeSpan BetweenEdits = TimeSpan.FromMilliseconds(150);

    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(2);

    public static int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter errors)
    {
        var surfaces = 25;
        if (arguments.Count > 1 || (arguments is [var said] && (!int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out surfaces) || surfaces == 0)))
        {
            errors.WriteLine("usage: screen [SURFACES]");
            return 2;
        }

        // The driver writes the screen it has drawn; what is measured is read from the other stream.
        var own = Console.Out;
        Console.SetOut(TextWriter.Null);
        var lines = Measure(surfaces);
        Console.SetOut(own);
        foreach (var line in lines)
            output.WriteLine(line);
        return 0;
    }

    private static string[] Measure(int surfaces)
    {
        using var ui = new DrawnDesk(BenchJobs.Text(surfaces), 120, 40);
        var (keys, frames, shown, best) = (new Figures(), new Figures(), new Figures(), new Figures());
        Settle(ui, frames);
        var busyBefore = ui.Busy;
        for (var edit = 0; edit < EditsToWarmUp + Edits; edit++)
        {
            if (edit == EditsToWarmUp)
                (keys, frames, shown, best, busyBefore) = (new Figures(), new Figures(), new Figures(), new Figures(), ui.Busy);
            Edit(ui, edit, keys, frames, shown);
            best.Add(Settle(ui, frames));
        }

        var busy = ui.Busy - busyBefore;
        var hurried = new Figures();
        for (var edit = 0; edit < Edits; edit++)
        {
            Edit(ui, edit, new Figures(), new Figures(), hurried);
            Frames(ui, BetweenEdits);
        }

        return
        [
            Line($"key to drawn screen while a plan is made, {surfaces} surfaces", keys),
            string.Create(CultureInfo.InvariantCulture, $"the same in the thread's own time: {busy.TotalMilliseconds / keys.Count:0.0} ms a key on the average"),
            Line("frames that take over a plan, and those between", frames),
            Line("edit to its plan on the screen", shown),
            Line("the same while the best plan of the edit before is still looked for", hurried),
            Line("from the first plan to the best plan found", best),
        ];
    }

    // Changes the number of pieces of the chosen surface, and goes on moving about until its plan is there.
    private static void Edit(DrawnDesk ui, int edit, Figures keys, Figures frames, Figures shown)
    {
        foreach (var key in new[] { Key.D1, Key.Home, Key.CursorRight, Key.Enter, Key.U.WithCtrl, edit % 2 == 0 ? Key.D2 : Key.D1 })
            keys.Add(ui.Press(key));
        var from = Stopwatch.GetTimestamp();
        keys.Add(ui.Press(Key.Enter));
        keys.Add(ui.Press(Key.CursorLeft));
        var down = true;
        while (ui.IsPlanning && Stopwatch.GetElapsedTime(from) < Longest)
        {
            keys.Add(ui.Press(down ? Key.CursorDown : Key.CursorUp));
            down = !down;
            Wait(ui, frames);
        }

        shown.Add(Stopwatch.GetElapsedTime(from));
    }

    private static void Wait(DrawnDesk ui, Figures frames)
    {
        var from = Stopwatch.GetTimestamp();
        do
        {
            Thread.Sleep(1);
            frames.Add(ui.Frame());
        }
        while (ui.IsPlanning && Stopwatch.GetElapsedTime(from) < BetweenKeys);
    }

    private static void Frames(DrawnDesk ui, TimeSpan time)
    {
        for (var from = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(from) < time;)
        {
            Thread.Sleep(1);
            ui.Frame();
        }
    }

    private static TimeSpan Settle(DrawnDesk ui, Figures frames)
    {
        var from = Stopwatch.GetTimestamp();
        while (!ui.IsSettled && Stopwatch.GetElapsedTime(from) < Longest)
        {
            Thread.Sleep(1);
            frames.Add(ui.Frame());
        }

        return Stopwatch.GetElapsedTime(from);
    }

    private static string Line(string what, Figures figures) => string.Create(
        CultureInfo.InvariantCulture,
        $"{what}: median {figures.At(0.5):0.0} ms, 95 % under {figures.At(0.95):0.0} ms, longest {figures.At(1):0.0} ms, {figures.Over(FrameMilliseconds)} of {figures.Count} over {FrameMilliseconds} ms");
}
