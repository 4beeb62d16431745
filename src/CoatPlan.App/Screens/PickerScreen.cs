using CoatPlan.App.Desk;
using CoatPlan.Sheets.Text;

namespace CoatPlan.App.Screens;

/// <summary>A list to pick from, with what the chosen row means. It takes the whole place, so that nothing is cut.</summary>
internal static class PickerScreen
{
    private const int MostNoteRows = 2;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="picker">The list.</param>
    public static void Draw(Canvas canvas, Picker picker)
    {
        canvas.Field(0, 0, canvas.Width, picker.Asks, Ink.Strong);
        var note = new Reader(canvas, 1);
        foreach (var line in NoteLines(picker, canvas.Width))
            note.Say(line, Ink.Quiet);
        var rows = picker.Rows;
        var (top, shown) = List(canvas.Width, canvas.Height, picker);
        var first = Scroll.First(picker.At, rows.Length, shown);
        var wordWidth = Math.Clamp(rows.IsEmpty ? 0 : rows.Max(row => row.Word.Length), 8, Math.Max(8, canvas.Width / 2));
        for (var y = 0; y < shown && first + y < rows.Length; y++)
            Row(canvas, top + y, picker, rows[first + y], wordWidth, first + y == picker.At);

        var text = new Reader(canvas, top + Math.Min(shown, Math.Max(rows.Length, 1)) + 1);
        if (rows.IsEmpty)
            text.Say($"Nothing holds this; {Keys.NameOf(Word.Empty)} shows all again.", Ink.Warning);
        else
            text.Say(Meaning(rows[picker.At]));
        if (picker.Complaint is { } complaint)
            text.Say($"! {complaint}", Ink.Warning);
    }

    /// <summary>The row to pick at a row of the place; null where there is none.</summary>
    /// <param name="width">Columns of the place.</param>
    /// <param name="height">Rows of the place.</param>
    /// <param name="y">The row.</param>
    /// <param name="picker">The list.</param>
    public static int? At(int width, int height, int y, Picker picker)
    {
        var (top, shown) = List(width, height, picker);
        var at = Scroll.First(picker.At, picker.Rows.Length, shown) + y - top;
        return y >= top && y < top + shown && at < picker.Rows.Length ? at : null;
    }

    private static void Row(Canvas canvas, int y, Picker picker, PickerRow row, int wordWidth, bool chosen)
    {
        var ink = chosen ? Ink.Chosen : Ink.Plain;
        var mark = !picker.Several ? "" : picker.IsMarked(row) ? "[x] " : "[ ] ";
        canvas.Field(0, y, canvas.Width, "", ink);
        var x = canvas.Write(0, y, $"{(chosen ? ">" : " ")} {mark}", ink);
        canvas.Field(x, y, wordWidth, row.Word, ink);
        canvas.Field(x + wordWidth + 2, y, canvas.Width - x - wordWidth - 2, row.Means, chosen ? ink : Ink.Quiet);
    }

    // The longest meaning has room below the list, so that the list does not jump while one goes through it; half of the place is the list's at least.
    private static (int Top, int Rows) List(int width, int height, Picker picker)
    {
        var top = 1 + NoteLines(picker, width).Count();
        var meaning = picker.All.IsEmpty ? 1 : picker.All.Max(row => Wrapping.Lines(Meaning(row), Math.Max(1, width)).Count());
        var below = 2 + Math.Min(meaning, Math.Max(1, (height / 2) - 2));
        return (top, Math.Max(1, height - top - below));
    }

    private static IEnumerable<string> NoteLines(Picker picker, int width)
    {
        var marked = !picker.Several ? "" : picker.Marked > 0 ? $"{picker.Marked} marked; " : $"none marked: {Keys.NameOf(Word.Enter)} takes the row with the >; ";
        var narrowed = picker.Filter.Length > 0 ? $"only what holds: {picker.Filter}" : "type to narrow the list";
        if (picker.Note.Length > 0)
            return Wrapping.Lines(picker.Note, Math.Max(1, width)).Take(MostNoteRows).Append($"{marked}{narrowed}");
        return [$"{marked}{narrowed}"];
    }

    private static string Meaning(PickerRow row) => row.Means.Length > 0 ? $"{row.Word}: {row.Means}" : row.Word;
}
