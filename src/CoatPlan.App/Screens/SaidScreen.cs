using CoatPlan.App.Desk;
using CoatPlan.Sheets.Text;

namespace CoatPlan.App.Screens;

/// <summary>What is asked, complained of or was done, above the totals: on as many rows as it needs, over the place.</summary>
internal static class SaidScreen
{
    private const int MostRows = 6;

    private const string Prompt = "> ";

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The whole screen.</param>
    /// <param name="desk">The desk.</param>
    public static void Draw(Canvas canvas, JobDesk desk)
    {
        var y = canvas.Height - FrameScreen.RowsBelow;
        if (desk is { Typing: { InCell: false } asked, Helping: false })
        {
            Above(canvas, y, [new string('─', canvas.Width)], [.. Lines(canvas, asked.Asks)], asked.Complaint is { } wrong ? [.. Lines(canvas, $"! {wrong}")] : []);
            canvas.Field(0, y, canvas.Width, Prompt, Ink.Strong);
            return;
        }

        var (text, ink) = desk switch
        {
            { Typing.Complaint: { } complaint } => ($"! {complaint}", Ink.Warning),
            { Typing: { } edit, Guiding: null } => (edit.Asks, Ink.Strong),
            { Trouble: { } trouble } => ($"! This could not be planned: {trouble}", Ink.Warning),
            _ => (desk.Message, Ink.Strong),
        };
        if (text.Length == 0)
            return;

        var lines = Lines(canvas, text).ToImmutableArray();
        Rows(canvas, y - lines.Length + 1, lines, ink);
    }

    /// <summary>Where a value is typed that belongs to no cell.</summary>
    /// <param name="width">Columns of the screen.</param>
    /// <param name="height">Rows of the screen.</param>
    public static Cell Field(int width, int height) =>
        new(Prompt.Length, Math.Max(0, height - FrameScreen.RowsBelow), Math.Max(1, width - Prompt.Length));

    private static void Above(Canvas canvas, int y, ImmutableArray<string> rule, ImmutableArray<string> asks, ImmutableArray<string> complaint)
    {
        var from = y - complaint.Length - asks.Length - rule.Length;
        Rows(canvas, from, rule, Ink.Quiet);
        Rows(canvas, from + rule.Length, asks, Ink.Strong);
        Rows(canvas, from + rule.Length + asks.Length, complaint, Ink.Warning);
    }

    private static void Rows(Canvas canvas, int from, ImmutableArray<string> lines, Ink ink)
    {
        for (var at = 0; at < lines.Length; at++)
            canvas.Field(0, from + at, canvas.Width, lines[at], ink);
    }

    private static IEnumerable<string> Lines(Canvas canvas, string text) => Wrapping.Lines(text, Math.Max(1, canvas.Width)).Take(MostRows);
}
