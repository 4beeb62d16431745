using CoatPlan.App.Desk;
using CoatPlan.App.Desk.Asking;

namespace CoatPlan.App.Screens;

/// <summary>A question of the guide whose answer is typed, and what was answered before.</summary>
internal static class GuideScreen
{
    private const int FieldRow = 3;

    private const int Indent = 2;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="desk">The desk.</param>
    /// <param name="asks">The question.</param>
    /// <returns>Where the answer is typed.</returns>
    public static Cell Draw(Canvas canvas, JobDesk desk, GuideQuestion asks)
    {
        canvas.Field(0, 0, canvas.Width, asks.Asks, Ink.Strong);
        new Reader(canvas, 1).Say(asks.Explains, Ink.Quiet);
        var text = new Reader(canvas, FieldRow + 2, Indent);
        var said = GuideQuestions.Said(desk.Guiding!);
        var room = Math.Max(0, canvas.Height - FieldRow - 3);
        if (!said.IsEmpty)
            text.Say("So far:", Ink.Quiet);
        foreach (var line in said.Skip(Math.Max(0, said.Length - room)))
            canvas.Field(Indent, NextRow(text), canvas.Width - Indent, line);
        return new Cell(Indent, FieldRow, canvas.Width - Indent);
    }

    private static int NextRow(Reader text)
    {
        text.Skip();
        return text.Y - 1;
    }
}
