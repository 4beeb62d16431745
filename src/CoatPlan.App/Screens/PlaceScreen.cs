using CoatPlan.App.Desk;

namespace CoatPlan.App.Screens;

/// <summary>The open place, or what lies over it.</summary>
internal static class PlaceScreen
{
    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="desk">The desk.</param>
    /// <returns>Where a value of it is typed; null where there is none.</returns>
    public static Cell? Draw(Canvas canvas, JobDesk desk)
    {
        if (desk.Judged is { } judged)
            JudgementScreen.Draw(canvas, judged);
        else if (desk.Running is { } running)
            RunningScreen.Draw(canvas, running);
        else if (desk.Asking is { } question)
            QuestionScreen.Draw(canvas, question);
        else if (desk.Helping)
            HelpScreen.Draw(canvas, desk);
        else if (desk.Picking is { } picker)
            PickerScreen.Draw(canvas, picker);
        else if (desk.GuideAsks is { } asks)
            return GuideScreen.Draw(canvas, desk, asks);
        else if (desk.Page is { } page)
            PageScreen.Draw(canvas, page, desk);
        else if (desk.Place == DeskPlace.Fields)
            return FieldsScreen.Draw(canvas, desk);
        else if (desk.Job is null)
            ProblemsScreen.Draw(canvas, desk);
        else
            return DrawOpen(canvas, desk);
        return null;
    }

    private static Cell? DrawOpen(Canvas canvas, JobDesk desk)
    {
        switch (desk.Place)
        {
            case DeskPlace.Surfaces:
                return SurfacesScreen.Draw(canvas, desk);
            case DeskPlace.Sequence:
                SequenceScreen.Draw(canvas, desk);
                break;
            case DeskPlace.Supplies:
                SuppliesScreen.Draw(canvas, desk);
                break;
            case DeskPlace.Timeline:
                TimelineScreen.Draw(canvas, desk);
                break;
            case DeskPlace.Air:
                AirScreen.Draw(canvas, desk);
                break;
            case DeskPlace.Sheets:
                SheetsScreen.Draw(canvas, desk);
                break;
        }

        return null;
    }
}
