using CoatPlan.App.Desk;
using CoatPlan.Sheets.Text;

namespace CoatPlan.App.Screens;

/// <summary>What is asked, complained of or was done, above the totals: on as many rows as it needs, which the place goes without.</summary>
internal static class SaidScreen
{
    private const int MostRows = 6;

    private const string Prompt = "> ";

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The whole screen.</param>
    /// <param name="desk">The desk.</param>
    public static void Draw(Canvas canvas, JobDesk desk)
    {
        var lines = Lines(canvas.Width, desk);
        var y = canvas.Height - FrameScreen.RowsBelow - lines.Length + 1;
        foreach (var (text, ink) in lines)
            canvas.Field(0, y++, canvas.Width, text, ink);
    }

    /// <summary>Rows that it has; one that is empty where nothing is said.</summary>
    /// <param name="width">Columns of the screen.</param>
    /// <param name="desk">The desk.</param>
    public static int Rows(int width, JobDesk desk) => Math.Max(1, Lines(width, desk).Length);

    /// <summary>Where a value is typed that belongs to no cell.</summary>
    /// <param name="width">Columns of the screen.</param>
    /// <param name="height">Rows of the screen.</param>
    public static Cell Field(int width, int height) =>
        new(Prompt.Length, Math.Max(0, height - FrameScreen.RowsBelow), Math.Max(1, width - Prompt.Length));

    private static ImmutableArray<(string Text, Ink Ink)> Lines(int width, JobDesk desk) => desk switch
    {
        { Typing: { InCell: false } asked, Helping: false } =>
        [
            (new string('─', width), Ink.Quiet),
            .. Wrapped(width, asked.Asks, Ink.Strong),
            .. asked.Complaint is { } wrong ? Wrapped(width, $"! {wrong}", Ink.Warning) : [],
            (Prompt, Ink.Strong),
        ],
        { Typing.Complaint: { } complaint } => Wrapped(width, $"! {complaint}", Ink.Warning),
        { Typing: { } edit, Guiding: null } => Wrapped(width, edit.Asks, Ink.Strong),
        { Trouble: { } trouble } => Wrapped(width, $"! This could not be planned: {trouble}", Ink.Warning),
        _ => Wrapped(width, desk.Message, Ink.Strong),
    };

    private static ImmutableArray<(string Text, Ink Ink)> Wrapped(int width, string text, Ink ink) =>
        text.Length == 0 ? [] : [.. Wrapping.Lines(text, Math.Max(1, width)).Take(MostRows).Select(line => (line, ink))];
}
