using CoatPlan.App.Desk;

namespace CoatPlan.App.Screens;

/// <summary>Turns a click into what it asks of the desk. What lies over a place is clicked before the place; a second click at once does what Enter does.</summary>
internal static class Clicks
{
    private const int RowOfPlaces = 1;

    /// <summary>A click at a point of the screen.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="width">Columns of the screen.</param>
    /// <param name="height">Rows of the screen.</param>
    /// <param name="x">Column of the point.</param>
    /// <param name="y">Row of the point.</param>
    public static void Once(JobDesk desk, int width, int height, int x, int y) => Point(desk, width, height, x, y);

    /// <summary>Two clicks at once at a point of the screen.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="width">Columns of the screen.</param>
    /// <param name="height">Rows of the screen.</param>
    /// <param name="x">Column of the point.</param>
    /// <param name="y">Row of the point.</param>
    public static void Twice(JobDesk desk, int width, int height, int x, int y)
    {
        // The first of the two marked it already where several can be marked.
        var enters = desk.Picking is { Several: false } || IsOpen(desk);
        if (Point(desk, width, height, x, y) && enters)
            desk.Do(Word.Enter);
    }

    private static bool IsOpen(JobDesk desk) => desk is { Asking: null, Picking: null, Helping: false, Judged: null, Running: null, Page: null, Guiding: null };

    // Whether something was chosen that Enter could act on.
    private static bool Point(JobDesk desk, int width, int height, int x, int y)
    {
        var (row, rows) = (y - FrameScreen.RowsAbove, FrameScreen.PlaceRows(width, height, desk));
        if (desk.Asking is { } question)
        {
            if (QuestionScreen.At(width, row, question) is { } answer)
                desk.Answer(answer.Letter);
            return false;
        }

        if (desk.Picking is { } picker)
            return PickerScreen.At(width, rows, row, picker) is { } at && PointAt(desk, picker, at);

        if (!IsOpen(desk))
            return false;

        if (y != RowOfPlaces)
            return Choose(desk, width, rows, x, row);

        if (FrameScreen.PlaceAt(x) is { } place)
            desk.Do(Word.GoSurfaces + (int)place);
        return false;
    }

    private static bool PointAt(JobDesk desk, Picker picker, int row)
    {
        desk.PointAt(row);
        if (picker.Several)
            desk.Do(Word.Mark);
        return true;
    }

    private static bool Choose(JobDesk desk, int width, int rows, int x, int row)
    {
        switch (desk.Place)
        {
            case DeskPlace.Surfaces when SurfacesScreen.At(width, rows, x, row, desk) is var (surface, column):
                desk.Choose(surface, column);
                return true;
            case DeskPlace.Sequence when SequenceScreen.At(width, rows, row, desk) is { } step:
                desk.ChooseStep(step);
                return true;
            case DeskPlace.Supplies when SuppliesScreen.At(rows, row, desk) is { } supply:
                desk.ChooseSupply(supply);
                return true;
            case DeskPlace.Fields when FieldsScreen.At(rows, row, desk) is { } field:
                desk.ChooseField(field);
                return true;
            case DeskPlace.Sheets when row == 0 && SheetsScreen.At(width, x, desk) is { } sheet:
                desk.ChooseSheet(sheet);
                return false;
            default:
                return false;
        }
    }
}
