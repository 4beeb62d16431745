using CoatPlan.App.Desk;

namespace CoatPlan.App.Screens;

/// <summary>A page that is read: its title, its lines, and where one is in it.</summary>
internal static class PageScreen
{
    private const int LongestPage = 2000;

    private const int NarrowestText = 20;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="page">The page.</param>
    /// <param name="desk">The desk.</param>
    public static void Draw(Canvas canvas, TextPage page, JobDesk desk)
    {
        var title = new Reader(canvas, 0);
        title.Say(page.Title, Ink.Strong);
        var whole = new Canvas(canvas.Width, LongestPage);
        var text = new Reader(whole, 0);
        Lines(text, page, canvas.Width);
        var below = new Canvas(canvas.Width, Math.Max(0, canvas.Height - title.Y - 1));
        LongPage.Show(below, whole, text.Y, desk);
        canvas.Paste(0, title.Y + 1, below);
    }

    /// <summary>Writes the lines of a page.</summary>
    /// <param name="text">Where to.</param>
    /// <param name="page">The page.</param>
    /// <param name="width">Columns that there are.</param>
    public static void Lines(Reader text, TextPage page, int width)
    {
        var first = text.Y;
        foreach (var line in page.Lines)
        {
            if (line.Kind == PageLineKind.Heading && text.Y > first)
                text.Skip();
            // Deep inputs would leave no room for their words.
            var lead = line.Lead.Length > width - NarrowestText ? line.Lead.TrimStart() : line.Lead;
            text.Item(lead, line.Text, InkOf(line.Kind));
        }
    }

    private static Ink InkOf(PageLineKind kind) => kind switch
    {
        PageLineKind.Heading => Ink.Strong,
        PageLineKind.Quiet => Ink.Quiet,
        PageLineKind.Warning => Ink.Warning,
        _ => Ink.Plain,
    };
}
