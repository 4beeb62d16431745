using CoatPlan.App.Desk;
using CoatPlan.Sheets.Text;

namespace CoatPlan.App.Screens;

/// <summary>The sheets, one at a time as they are printed, before they are written.</summary>
internal static class SheetsScreen
{
    private const int LongestPage = 2000;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="desk">The desk.</param>
    public static void Draw(Canvas canvas, JobDesk desk)
    {
        var sheets = desk.Sheets;
        if (sheets.IsEmpty)
            return;

        foreach (var (at, x, _) in Tabs(canvas.Width, desk))
        {
            var chosen = at == desk.SheetAt;
            canvas.Write(x, 0, chosen ? $"[{sheets[at].Title}]" : $" {sheets[at].Title} ", chosen ? Ink.BarChosen : Ink.Plain);
        }

        canvas.Write(0, 1, $"{Keys.NameOf(Word.WriteSheets)} writes all, as PDF and as text", Ink.Quiet);
        var lines = TextSheet.Write(sheets[desk.SheetAt]).TrimEnd('\n').Split('\n');
        var page = new Canvas(canvas.Width, Math.Min(lines.Length, LongestPage));
        for (var y = 0; y < page.Height; y++)
            page.Write(0, y, lines[y]);

        var below = new Canvas(canvas.Width, Math.Max(0, canvas.Height - 2));
        LongPage.Show(below, page, page.Height, desk);
        canvas.Paste(0, 2, below);
    }

    /// <summary>The sheet whose title stands at a column of the first row; null where there is none.</summary>
    /// <param name="width">Columns of the place.</param>
    /// <param name="x">The column.</param>
    /// <param name="desk">The desk.</param>
    public static int? At(int width, int x, JobDesk desk)
    {
        foreach (var (at, from, to) in Tabs(width, desk))
        {
            if (x >= from && x < to)
                return at;
        }

        return null;
    }

    // From the first title on; where the chosen one would not fit, from as many later as it takes.
    private static IEnumerable<(int At, int From, int To)> Tabs(int width, JobDesk desk)
    {
        int[] wide = [.. desk.Sheets.Select(sheet => sheet.Title.Length + 2)];
        var first = 0;
        while (first < desk.SheetAt && wide[first..(desk.SheetAt + 1)].Sum() > width)
            first++;

        var x = 0;
        for (var at = first; at < wide.Length; at++)
        {
            yield return (at, x, x + wide[at]);
            x += wide[at];
        }
    }
}
