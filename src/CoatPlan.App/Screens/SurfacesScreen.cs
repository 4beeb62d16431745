using CoatPlan.App.Desk;
using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Supplies;

namespace CoatPlan.App.Screens;

/// <summary>The table of surfaces, and under it everything about the chosen one.</summary>
internal static class SurfacesScreen
{
    private const int Gap = 1;

    private const int LeastRowsBelow = 5;

    private static readonly ImmutableArray<(SurfaceColumn Column, string Head, int Least, int Share)> Columns =
    [
        (SurfaceColumn.Piece, "Piece", 12, 4),
        (SurfaceColumn.Count, "No", 2, 0),
        (SurfaceColumn.Material, "Material", 9, 2),
        (SurfaceColumn.Finish, "On it", 8, 1),
        (SurfaceColumn.Condition, "State", 11, 4),
        (SurfaceColumn.Area, "Area", 8, 1),
        (SurfaceColumn.System, "System", 9, 3),
        (SurfaceColumn.Cans, "Cans", 4, 0),
        (SurfaceColumn.Ready, "Ready", 9, 1),
    ];

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="desk">The desk.</param>
    /// <returns>Where the chosen cell is.</returns>
    public static Cell? Draw(Canvas canvas, JobDesk desk)
    {
        if (desk.Job is not { } job)
            return null;

        var fields = Fields(canvas.Width, job);
        foreach (var (column, head, x, width) in fields)
            Put(canvas, column, x, 0, width, head, Ink.Strong);

        var rows = Math.Max(1, Math.Min(job.Surfaces.Length, canvas.Height - 1 - LeastRowsBelow));
        var first = Scroll.First(desk.SurfaceAt, job.Surfaces.Length, rows);
        Cell? chosenCell = null;
        for (var row = 0; row < rows && first + row < job.Surfaces.Length; row++)
        {
            var at = first + row;
            var surface = job.Surfaces[at];
            var planned = desk.Plan?.Surfaces.FirstOrDefault(each => each.Id == surface.Id);
            var chosen = at == desk.SurfaceAt;
            if (chosen)
                canvas.Field(0, row + 1, canvas.Width, "", Ink.Chosen);
            foreach (var (column, _, x, width) in fields)
            {
                var here = chosen && column == desk.ColumnAt;
                Put(canvas, column, x, row + 1, width, Value(column, surface, planned, job.Units), here ? Ink.ChosenCell : chosen ? Ink.Chosen : Ink.Plain);
                if (here)
                    chosenCell = new Cell(x, row + 1, width);
            }
        }

        Below(canvas, rows + 2, desk, rows);
        return chosenCell;
    }

    /// <summary>The surface and column at a point; null where there is none.</summary>
    /// <param name="width">Columns of the place.</param>
    /// <param name="height">Rows of the place.</param>
    /// <param name="x">Column of the point.</param>
    /// <param name="y">Row of the point.</param>
    /// <param name="desk">The desk.</param>
    public static (int Surface, SurfaceColumn Column)? At(int width, int height, int x, int y, JobDesk desk)
    {
        if (desk.Job is not { } job)
            return null;

        var rows = Math.Max(1, Math.Min(job.Surfaces.Length, height - 1 - LeastRowsBelow));
        if (y < 1 || y > rows)
            return null;

        var surface = Scroll.First(desk.SurfaceAt, job.Surfaces.Length, rows) + y - 1;
        var column = Fields(width, job).LastOrDefault(field => field.X <= x).Column;
        return surface < job.Surfaces.Length ? (surface, column) : null;
    }

    private static List<(SurfaceColumn Column, string Head, int X, int Width)> Fields(int width, Job job)
    {
        var widths = Widths(width - (Columns.Length - 1) * Gap, job);
        var fields = new List<(SurfaceColumn, string, int, int)>();
        var x = 0;
        for (var i = 0; i < Columns.Length; i++)
        {
            fields.Add((Columns[i].Column, Columns[i].Head, x, widths[i]));
            x += widths[i] + Gap;
        }

        return fields;
    }

    // What is to spare goes to the columns whose words would be cut off, in turn; what none of them needs is shared out.
    private static int[] Widths(int width, Job job)
    {
        int[] wanted = [.. Columns.Select(column => job.Surfaces.Select(surface => Canvas.ColumnsOf(Words(column.Column, surface))).DefaultIfEmpty(0).Max())];
        int[] widths = [.. Columns.Select((column, i) => wanted[i] == 0 ? column.Least : Math.Min(column.Least, Math.Max(wanted[i], column.Head.Length)))];
        var spare = Math.Max(0, width - widths.Sum());
        while (spare > 0 && Enumerable.Range(0, widths.Length).Any(i => widths[i] < wanted[i]))
        {
            for (var i = 0; i < widths.Length && spare > 0; i++)
            {
                if (widths[i] >= wanted[i])
                    continue;

                widths[i]++;
                spare--;
            }
        }

        var shares = Columns.Sum(column => column.Share);
        return [.. widths.Select((columnWidth, i) => columnWidth + (spare * Columns[i].Share / shares))];
    }

    private static void Put(Canvas canvas, SurfaceColumn column, int x, int y, int width, string text, Ink ink)
    {
        if (column is SurfaceColumn.Count or SurfaceColumn.Cans or SurfaceColumn.Area)
            canvas.FieldRight(x, y, width, text, ink);
        else
            canvas.Field(x, y, width, text, ink);
    }

    // What the person wrote; the figures always have room.
    private static string Words(SurfaceColumn column, JobSurface surface) => column switch
    {
        SurfaceColumn.Piece => surface.Name,
        SurfaceColumn.Material => surface.Material,
        SurfaceColumn.Finish => surface.Finish,
        SurfaceColumn.Condition => string.Join(", ", surface.Conditions),
        SurfaceColumn.System => surface.System,
        _ => "",
    };

    private static string Value(SurfaceColumn column, JobSurface surface, Plans.PlanSurface? planned, PrintUnits units) => column switch
    {
        SurfaceColumn.Count => Written.Number(surface.Count, 0),
        SurfaceColumn.Area => surface.Area is { } area ? Written.Area(area.SquareMeters, units)
            : planned is null ? "shapes" : Written.Area(planned.AreaM2 / planned.Relief, units),
        SurfaceColumn.Cans => planned is null ? "" : Written.Number(planned.Cans, 1),
        SurfaceColumn.Ready => planned is null ? "" : planned.ReadyAt is { } ready ? Clock.DayAndTime(ready) : "never",
        _ => Words(column, surface),
    };

    private static void Below(Canvas canvas, int y, JobDesk desk, int rows)
    {
        if (desk.Surface is not { } surface || desk.Job is not { } job)
            return;

        var more = job.Surfaces.Length > rows ? $"  ({desk.SurfaceAt + 1} of {job.Surfaces.Length})" : "";
        canvas.Field(0, y, canvas.Width, $"{surface.Name}{(surface.Count > 1 ? $" ({surface.Count})" : "")}{more}", Ink.Strong);
        var text = new Reader(canvas, y + 1);
        text.Say($"{surface.Material}, {surface.Finish}, {string.Join(", ", surface.Conditions)}; {(surface.Stays ? "stays on the vehicle" : "comes off")}{Tag(desk)}");
        if (desk.Planned is { } planned)
        {
            var rough = planned.Relief > 1 ? $", {Written.Number(planned.Relief, 2)} times its outline as it is rough" : "";
            text.Say($"{Written.Area(planned.AreaM2, job.Units)} to coat on each{rough}; {Written.Number(planned.Cans, 2)} {UnitWords.Behind(Math.Round(planned.Cans, 2), "can")} by itself, what is left in one goes on the next piece; "
                + (planned.ReadyAt is { } ready ? $"can be handled {Clock.Moment(ready)}" : "a coat could not be placed"));
        }

        foreach (var mask in surface.Masks)
            text.Say($"mask: {mask.What}{(mask.Edge is { } edge ? $", {Written.Length(edge.Meters, job.Units)} of tape" : "")}");
        foreach (var warning in desk.Plan?.Warnings.Where(warning => warning.Surface == surface.Id) ?? [])
            text.Say($"! {warning.Text}", Ink.Warning);
        Meanings(text, desk, surface, job);
    }

    // What the words in the table mean, for a person who did not choose them.
    private static void Meanings(Reader text, JobDesk desk, JobSurface surface, Job job)
    {
        var catalogue = desk.Catalogue;
        text.Skip();
        if (job.Systems.FirstOrDefault(system => system.Key == surface.System) is { } system)
            text.Item($"{system.Key}: ", desk.MeaningOf(system), Ink.Quiet);
        foreach (var row in PresetTables.Conditions(catalogue).Rows.Where(row => surface.Conditions.Contains(row.Word)))
            text.Item($"{row.Word}: ", row.Means, Ink.Quiet);
        foreach (var row in PresetTables.Finishes(catalogue).Rows.Where(row => row.Word == surface.Finish && row.Means.Length > 0))
            text.Item($"{row.Word}: ", row.Means, Ink.Quiet);
        foreach (var row in PresetTables.Materials(catalogue).Rows.Where(row => row.Word == surface.Material))
            text.Item($"{row.Word}: ", row.Means, Ink.Quiet);
    }

    private static string Tag(JobDesk desk) => desk.Planned?.Tag is { } tag ? $", tag {tag}" : "";
}
