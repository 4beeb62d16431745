using CoatPlan.App.Desk;
using CoatPlan.Tests.Desk;
using Terminal.Gui.Input;

namespace CoatPlan.Tests.Screens;

public sealed class SheetsPreviewTests
{
    [Fact]
    public void The_preview_follows_the_newest_plan_while_it_is_looked_at()
    {
        using var ui = new HeadlessUi(JobFile.Unnamed(Desks.SmallJob), Desks.Quick, 120, 40);
        ui.Type("7");
        Rename(ui, "Bay of the coupe");
        ui.Type("6");
        ui.Screen.ShouldContain("Bay of the coupe", Case.Sensitive);

        ui.Press(Key.Z.WithCtrl);
        Place(ui).ShouldContain("Small bay");
        Place(ui).ShouldNotContain("Bay of the coupe");

        ui.Press(Key.Y.WithCtrl);
        Place(ui).ShouldContain("Bay of the coupe");
    }

    private static void Rename(HeadlessUi ui, string name)
    {
        ui.Press(Key.Home);
        while (ui.Desk.Outline.Rows[ui.Desk.FieldAt].Name != "job")
            ui.Press(Key.CursorDown);
        ui.Press(Key.Enter, Key.U.WithCtrl);
        ui.Type(name);
        ui.Press(Key.Enter);
    }

    // Without the title, which names the job whatever the preview shows.
    private static string Place(HeadlessUi ui) => string.Join('\n', ui.Picture.Split('\n')[2..^4]);
}
