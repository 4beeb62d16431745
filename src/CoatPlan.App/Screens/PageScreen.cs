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
    /// <param name="from">The first row to show.</param>
    public static void Draw(Canvas canvas, TextPage page, int from)
    {
        canvas.Field(0, 0, canvas.Width, page.Title, Ink.Strong);
        var whole = new Canvas(canvas.Width, LongestPage);
        var text = new Reader(whole, 0);
        foreach (var line in page.Lines)
        {
            if (line.Kind == PageLineKind.Heading && text.Y > 0)
                text.Skip();
            // Deep inputs would leave no room for their words.
            var lead = line.Lead.Length > canvas.Width - NarrowestText ? line.Lead.TrimStart() : line.Lead;
            text.Item(lead, line.Text, InkOf(line.Kind));
        }

        var below = new Canvas(canvas.Width, Math.Max(0, canvas.Height - 3));
        AirScreen.Show(below, whole, Math.Clamp(from, 0, Math.Max(0, text.Y - below.Height)), text.Y);
        canvas.Paste(0, 2, below);
        canvas.Field(0, canvas.Height - 1, canvas.Width, $"{Keys.NameOf(Word.Back)} closes   {Keys.NameOf(Word.Explain)} explains any figure", Ink.KeyName);
    }

    private static Ink InkOf(PageLineKind kind) => kind switch
    {
        PageLineKind.Heading => Ink.Strong,
        PageLineKind.Quiet => Ink.Quiet,
        PageLineKind.Warning => Ink.Warning,
        _ => Ink.Plain,
    };
}
