using CoatPlan.App.Desk;

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

    /// <summary>Rows below the place where little is said: what is asked or was done, the totals, the keys.</summary>
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
        TotalsScreen.Draw(canvas, canvas.Height - 2, desk);
        BottomLine(canvas, canvas.Height - 1, desk);
    }

    /// <summary>Rows that the place has on a screen; what is said in more than one row leaves it fewer.</summary>
    /// <param name="width">Columns of the screen.</param>
    /// <param name="height">Rows of the screen.</param>
    /// <param name="desk">The desk.</param>
    public static int PlaceRows(int width, int height, JobDesk desk) => Math.Max(0, height - RowsAbove - RowsBelow - SaidScreen.Rows(width, desk) + 1);

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
        var menu = desk.Guiding is null ? $"{Keys.NameOf(Word.Menu)} menu  {Keys.NameOf(Word.Quit)} quit " : "";
        var help = $"{Keys.NameOf(Word.Help)} help  {menu}";
        canvas.Field(0, 0, canvas.Width - help.Length - 1, name, Ink.Bar);
        canvas.Write(canvas.Width - help.Length, 0, help, Ink.Bar);
    }

    private static void Places(Canvas canvas, JobDesk desk)
    {
        if (desk.Guiding is not null)
        {
            canvas.Field(0, 1, canvas.Width, $" question {desk.GuideAnswers + 1}; every answer can be changed later", Ink.Quiet);
            return;
        }

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

    private static void BottomLine(Canvas canvas, int y, JobDesk desk)
    {
        var x = 0;
        foreach (var (name, brief) in KeyHints.Of(desk))
        {
            var columns = Canvas.ColumnsOf(name) + Canvas.ColumnsOf(brief) + 3;
            if (x + columns > canvas.Width)
                return;
            x = canvas.Write(x, y, name, Ink.KeyName);
            x = canvas.Write(x + 1, y, brief, Ink.Quiet) + 2;
        }
    }
}
