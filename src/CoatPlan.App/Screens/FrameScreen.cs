using CoatPlan.App.Desk;
using Terminal.Gui.Text;

namespace CoatPlan.App.Screens;

/// <summary>What stands around every place: the job's name and the places above, the totals and the keys below.</summary>
internal static class FrameScreen
{
    /// <summary>Fewest columns in which the program draws its places.</summary>
    public const int LeastWidth = 60;

    /// <summary>Fewest rows in which the program draws its places.</summary>
    public const int LeastHeight = 16;

    /// <summary>Rows above the place.</summary>
    public const int RowsAbove = 2;

    /// <summary>Rows below the place: what is asked or was done, the totals, the keys.</summary>
    public const int RowsBelow = 3;

    private static readonly ImmutableArray<(DeskPlace Place, string Name)> Tabs =
    [
        (DeskPlace.Surfaces, "1 Surfaces"),
        (DeskPlace.Sequence, "2 Sequence"),
        (DeskPlace.Supplies, "3 Supplies"),
        (DeskPlace.Timeline, "4 Timeline"),
        (DeskPlace.Air, "5 Air & safety"),
        (DeskPlace.Sheets, "6 Sheets"),
        (DeskPlace.Fields, "7 Fields"),
    ];

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The whole screen.</param>
    /// <param name="desk">The desk.</param>
    public static void Draw(Canvas canvas, JobDesk desk)
    {
        Title(canvas, desk);
        Places(canvas, desk);
        Said(canvas, canvas.Height - 3, desk);
        TotalsScreen.Draw(canvas, canvas.Height - 2, desk);
        BottomLine(canvas, canvas.Height - 1, desk);
    }

    /// <summary>The place whose name stands at a column of the second row; null between names.</summary>
    /// <param name="x">The column.</param>
    public static DeskPlace? PlaceAt(int x)
    {
        var from = 0;
        foreach (var (place, name) in Tabs)
        {
            var to = from + name.Length + 1;
            if (x >= from && x < to)
                return place;
            from = to;
        }

        return null;
    }

    private static void Title(Canvas canvas, JobDesk desk)
    {
        canvas.Field(0, 0, canvas.Width, "", Ink.Bar);
        var unsaved = desk.Unsaved ? " (not saved)" : "";
        var name = $" CoatPlan: {(desk.Guiding is null ? desk.Job?.Name ?? desk.File.Name : "a new job, by asking")}{unsaved}";
        var help = $"{Keys.NameOf(Word.Help)} help ";
        canvas.Field(0, 0, canvas.Width - help.Length - 1, name, Ink.Bar);
        canvas.Write(canvas.Width - help.Length, 0, help, Ink.Bar);
    }

    private static void Places(Canvas canvas, JobDesk desk)
    {
        var x = 0;
        var afterChosen = false;
        foreach (var (place, name) in Tabs)
        {
            var chosen = place == desk.Place;
            var ink = chosen ? Ink.BarChosen : Ink.Quiet;
            x = canvas.Write(x, 1, chosen ? "[" : afterChosen ? "]" : " ", chosen || afterChosen ? Ink.BarChosen : ink);
            x = canvas.Write(x, 1, name, ink);
            afterChosen = chosen;
        }

        if (afterChosen)
            canvas.Write(x, 1, "]", Ink.BarChosen);
    }

    private static void Said(Canvas canvas, int y, JobDesk desk)
    {
        if (desk.Typing is { } edit)
        {
            if (edit.Complaint is { } complaint)
                canvas.Field(0, y, canvas.Width, $"! {complaint}", Ink.Warning);
            else
                canvas.Field(0, y, canvas.Width, edit.InCell ? edit.Asks : $"{edit.Asks}: ", Ink.Strong);
            return;
        }

        if (desk.Trouble is { } trouble)
            canvas.Field(0, y, canvas.Width, $"! This could not be planned: {trouble}", Ink.Warning);
        else
            canvas.Field(0, y, canvas.Width, desk.Message, Ink.Strong);
    }

    private static void BottomLine(Canvas canvas, int y, JobDesk desk)
    {
        var x = 0;
        var rows = BottomKeys(desk);
        foreach (var (name, brief) in rows)
        {
            var columns = name.GetColumns() + brief.GetColumns() + 3;
            if (x + columns > canvas.Width)
                return;
            x = canvas.Write(x, y, name, Ink.KeyName);
            x = canvas.Write(x + 1, y, brief, Ink.Quiet) + 2;
        }
    }

    // What the keys do while something lies over the place is said by what lies there.
    private static IEnumerable<(string Name, string Brief)> BottomKeys(JobDesk desk)
    {
        if (desk.Guiding is not null)
            return [(Keys.NameOf(Word.Enter), "take"), (Keys.NameOf(Word.Back), "the question before"), (Keys.NameOf(Word.Quit), "stop asking")];
        if (desk.Typing is not null)
            return [(Keys.NameOf(Word.Enter), "take"), (Keys.NameOf(Word.Next), "take, next"), (Keys.NameOf(Word.Back), "leave as it was")];
        if (desk is { Picking: null, Asking: null, Page: null, Running: null, Helping: false, Judged: null })
            return Keys.BottomLine(desk.Place).Select(row => (row.Pressed[0].Name, row.Brief));
        return [(Keys.NameOf(Word.Back), desk.Running is null ? "back" : "stop")];
    }
}
