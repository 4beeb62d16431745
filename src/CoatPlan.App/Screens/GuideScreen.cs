using CoatPlan.App.Desk;
using CoatPlan.App.Desk.Asking;

namespace CoatPlan.App.Screens;

/// <summary>A question of the guide whose answer is typed, and what was answered before.</summary>
internal static class GuideScreen
{
    // The answer stands still from question to question; only a longer explanation moves it down.
    private const int UsualRow = 3;

    private const int Indent = 2;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="desk">The desk.</param>
    /// <param name="asks">The question.</param>
    /// <returns>Where the answer is typed.</returns>
    public static Cell Draw(Canvas canvas, JobDesk desk, GuideQuestion asks)
    {
        canvas.Field(0, 0, canvas.Width, asks.Asks, Ink.Strong);
        var explained = new Reader(canvas, 1);
        explained.Say(asks.Explains, Ink.Quiet);
        var fieldRow = Math.Max(UsualRow, explained.Y);
        var text = new Reader(canvas, fieldRow + 2, Indent);
        var said = GuideQuestions.Said(desk.Guiding!);
        var room = Math.Max(0, canvas.Height - fieldRow - 3);
        if (!said.IsEmpty)
            text.Say("So far:", Ink.Quiet);
        foreach (var line in said.Skip(Math.Max(0, said.Length - room)))
            canvas.Field(Indent, NextRow(text), canvas.Width - Indent, line);
        return new Cell(Indent, fieldRow, canvas.Width - Indent);
    }

    private static int NextRow(Reader text)
    {
        text.Skip();
        return text.Y - 1;
    }
}
