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

        var x = 0;
        for (var at = 0; at < sheets.Length; at++)
        {
            var chosen = at == desk.SheetAt;
            x = canvas.Write(x, 0, chosen ? $"[{sheets[at].Title}]" : $" {sheets[at].Title} ", chosen ? Ink.BarChosen : Ink.Plain);
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
    /// <param name="x">The column.</param>
    /// <param name="desk">The desk.</param>
    public static int? At(int x, JobDesk desk)
    {
        var from = 0;
        for (var at = 0; at < desk.Sheets.Length; at++)
        {
            var to = from + desk.Sheets[at].Title.Length + 2;
            if (x >= from && x < to)
                return at;
            from = to;
        }

        return null;
    }
}
