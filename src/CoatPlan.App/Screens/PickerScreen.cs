using CoatPlan.App.Desk;

namespace CoatPlan.App.Screens;

/// <summary>A list to pick from, with what the chosen row means. It takes the whole place, so that nothing is cut.</summary>
internal static class PickerScreen
{
    private const int MeaningRows = 4;

    private const int RowsAbove = 2;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="picker">The list.</param>
    public static void Draw(Canvas canvas, Picker picker)
    {
        canvas.Field(0, 0, canvas.Width, picker.Asks, Ink.Strong);
        canvas.Field(0, 1, canvas.Width, picker.Filter.Length > 0 ? $"only what holds: {picker.Filter}" : picker.Note.Length > 0 ? picker.Note : "type to narrow the list", Ink.Quiet);
        var rows = picker.Rows;
        var shown = Math.Max(1, canvas.Height - 4 - MeaningRows);
        var first = Scroll.First(picker.At, rows.Length, shown);
        var wordWidth = Math.Clamp(rows.IsEmpty ? 0 : rows.Max(row => row.Word.Length), 8, Math.Max(8, canvas.Width / 3));
        for (var y = 0; y < shown && first + y < rows.Length; y++)
        {
            var row = rows[first + y];
            var chosen = first + y == picker.At;
            var ink = chosen ? Ink.Chosen : Ink.Plain;
            var mark = picker.Several ? picker.IsMarked(row) ? "[x] " : "[ ] " : "";
            canvas.Field(0, y + 2, canvas.Width, "", ink);
            var x = canvas.Write(0, y + 2, $"{(chosen ? ">" : " ")} {mark}", ink);
            canvas.Field(x, y + 2, wordWidth, row.Word, ink);
            canvas.Field(x + wordWidth + 2, y + 2, canvas.Width - x - wordWidth - 2, row.Means, chosen ? ink : Ink.Quiet);
        }

        var text = new Reader(canvas, Math.Min(shown, Math.Max(rows.Length, 1)) + 3);
        if (rows.IsEmpty)
            text.Say("Nothing holds this; erase to see more.", Ink.Warning);
        else
            text.Say($"{rows[picker.At].Word}: {rows[picker.At].Means}");
        if (picker.Complaint is { } complaint)
            text.Say($"! {complaint}", Ink.Warning);
        var several = picker.Several ? $"{Keys.NameOf(Word.Mark)} mark   " : "";
        canvas.Field(0, canvas.Height - 1, canvas.Width, $"{several}{Keys.NameOf(Word.Enter)} take   {Keys.NameOf(Word.Back)} leave as it was", Ink.KeyName);
    }

    /// <summary>The row to pick at a row of the place; null where there is none.</summary>
    /// <param name="height">Rows of the place.</param>
    /// <param name="y">The row.</param>
    /// <param name="picker">The list.</param>
    public static int? At(int height, int y, Picker picker)
    {
        var shown = Math.Max(1, height - 4 - MeaningRows);
        var at = Scroll.First(picker.At, picker.Rows.Length, shown) + y - RowsAbove;
        return y >= RowsAbove && y < RowsAbove + shown && at < picker.Rows.Length ? at : null;
    }
}
