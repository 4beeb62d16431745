using CoatPlan.App.Desk;
using CoatPlan.Jobs;

namespace CoatPlan.App.Screens;

/// <summary>Every field of the job, one map or list at a time, set or not, with what it says.</summary>
internal static class FieldsScreen
{
    private const int RowsAbove = 1;

    private const int RowsBelow = 4;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="desk">The desk.</param>
    /// <returns>Where the chosen value is; null where there is none.</returns>
    public static Cell? Draw(Canvas canvas, JobDesk desk)
    {
        var outline = desk.Outline;
        canvas.Field(0, 0, canvas.Width, $"The whole job{(outline.Path.Steps.IsEmpty ? "" : $" > {outline.Path.ToString().Replace(".", " > ", StringComparison.Ordinal)}")}", Ink.Strong);
        if (desk.ShapesSay is { Length: > 0 } shapes)
            canvas.FieldRight(canvas.Width / 2, 0, canvas.Width - (canvas.Width / 2), shapes, Ink.Strong);
        var rows = JobFields.RowsOf(outline);
        var shown = Math.Max(1, canvas.Height - RowsAbove - RowsBelow);
        var first = Scroll.First(desk.FieldAt, rows, shown);
        var nameWidth = Math.Clamp(outline.Rows.Select(row => row.Name.Length).DefaultIfEmpty(0).Max() + 1, 8, Math.Max(8, canvas.Width / 4));
        Cell? cell = null;
        for (var y = 0; y < shown && first + y < rows; y++)
        {
            var at = first + y;
            var chosen = at == desk.FieldAt;
            var ink = chosen ? Ink.Chosen : Ink.Plain;
            canvas.Field(0, y + RowsAbove, canvas.Width, "", ink);
            canvas.Write(0, y + RowsAbove, chosen ? ">" : " ", ink);
            var valueAt = nameWidth + 4;
            if (at < outline.Rows.Length)
                Row(canvas, y + RowsAbove, nameWidth, outline.Rows[at], ink);
            else
                canvas.Write(2, y + RowsAbove, outline.TakesKeys ? "+ add one under a name" : "+ add one", ink);
            if (chosen)
                cell = new Cell(valueAt, y + RowsAbove, canvas.Width - valueAt);
        }

        Below(canvas, desk, outline);
        return cell;
    }

    /// <summary>The field at a row of the place; null where there is none.</summary>
    /// <param name="height">Rows of the place.</param>
    /// <param name="y">The row.</param>
    /// <param name="desk">The desk.</param>
    public static int? At(int height, int y, JobDesk desk)
    {
        var rows = JobFields.RowsOf(desk.Outline);
        var shown = Math.Max(1, height - RowsAbove - RowsBelow);
        var at = Scroll.First(desk.FieldAt, rows, shown) + y - RowsAbove;
        return y >= RowsAbove && y < RowsAbove + shown && at < rows ? at : null;
    }

    private static void Row(Canvas canvas, int y, int nameWidth, OutlineRow row, Ink ink)
    {
        canvas.Field(2, y, nameWidth, row.Name, row.IsSet ? ink == Ink.Plain ? Ink.Strong : ink : ink);
        canvas.Write(nameWidth + 2, y, row is { IsRequired: true, IsSet: false } ? "!" : " ", ink);
        var opens = row.Kind is OutlineKind.Map or OutlineKind.List;
        var value = row.IsSet ? row.Value : row.IsRequired ? "is needed" : "-";
        canvas.Field(nameWidth + 4, y, canvas.Width - nameWidth - 4, opens ? $"{value} >" : value, row.IsSet || ink != Ink.Plain ? ink : Ink.Quiet);
    }

    private static void Below(Canvas canvas, JobDesk desk, Outline outline)
    {
        var text = new Reader(canvas, canvas.Height - RowsBelow + 1);
        if (desk.FieldAt < outline.Rows.Length)
        {
            var row = outline.Rows[desk.FieldAt];
            var example = row.Example.Length > 0 && row.Words.IsEmpty ? $", such as {row.Example}" : "";
            var words = row.Words.IsEmpty ? "" : $": {string.Join(", ", row.Words)}";
            if (row.Says.Length > 0)
                text.Say($"{row.Name}: {row.Says}{example}{words}");
        }

        if (!desk.Reading.Problems.IsEmpty && desk.Typing is null)
            text.Say($"! {desk.Reading.Problems[0]}", Ink.Warning);
    }
}
