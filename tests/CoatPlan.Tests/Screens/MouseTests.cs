using CoatPlan.App.Desk;
using CoatPlan.App.Wording;
using CoatPlan.Tests.Desk;
using Terminal.Gui.Input;

namespace CoatPlan.Tests.Screens;

public sealed class MouseTests
{
    [Fact]
    public void A_click_on_a_name_opens_its_place()
    {
        using var ui = Open();
        for (var place = 0; place < Enum.GetValues<DeskPlace>().Length; place++)
        {
            var name = Tab(ui, $"{place + 1} ");

            ui.Click(name, 1);

            ((int)ui.Desk.Place).ShouldBe(place);
        }
    }

    [Fact]
    public void A_click_chooses_a_cell_and_a_second_one_changes_it()
    {
        using var ui = Open();
        var (x, y) = Find(ui, "Bracket");

        ui.Click(x, y);
        (ui.Desk.SurfaceAt, ui.Desk.ColumnAt).ShouldBe((1, SurfaceColumn.Piece));
        ui.Click(x, y, twice: true);

        ui.Desk.Typing.ShouldNotBeNull().Typed.ShouldBe("Bracket");
    }

    [Fact]
    public void Steps_supplies_and_fields_are_chosen_with_a_click()
    {
        using var ui = Open();
        ui.Type("2");
        ui.Click(30, 5);
        ui.Desk.StepAt.ShouldBeGreaterThan(0);
        ui.Type("3");
        ui.Click(5, 4);
        ui.Desk.SupplyAt.ShouldBe(1);
        ui.Type("7");
        var (x, y) = Find(ui, "  place ");
        ui.Click(x + 2, y, twice: true);
        ui.Desk.Outline.Path.ToString().ShouldBe("place");
    }

    [Fact]
    public void A_list_is_picked_from_with_clicks_and_the_wheel()
    {
        using var ui = Open();
        ui.Press(Key.CursorRight, Key.CursorRight, Key.Enter);
        var (x, y) = Find(ui, "cast aluminium  ");

        ui.Wheel(down: true);
        ui.Click(x, y, twice: true);

        ui.Desk.Job!.Surfaces[0].Material.ShouldBe("cast aluminium");
    }

    [Fact]
    public void A_question_is_answered_with_a_click()
    {
        using var ui = Open();
        ui.Type("c");
        ui.Press(Key.Q.WithCtrl);
        var (x, y) = Find(ui, "Discard and leave");

        ui.Click(x, y);

        ui.Desk.Left.ShouldBeTrue();
    }

    [Fact]
    public void A_double_click_opens_the_row_under_it_and_not_the_chosen_one()
    {
        using var ui = Open();
        ui.Desk.SurfaceAt.ShouldBe(0);
        var (x, y) = Find(ui, "Bracket");
        ui.Click(x, y, twice: true);
        ui.Desk.Typing.ShouldNotBeNull().Typed.ShouldBe("Bracket");
        ui.Press(Key.Esc);

        ui.Type("2");
        ui.Press(Key.Home);
        var steps = ui.Desk.Plan!.Steps;
        var row = Array.FindIndex(Rows(ui), line => line.StartsWith($"  {Clock.Time(steps[2].Start)}-{Clock.Time(steps[2].End)}", StringComparison.Ordinal));
        row.ShouldBeGreaterThan(0);
        ui.Click(30, row, twice: true);
        ui.Desk.Step.ShouldBe(steps[2]);
        ui.Desk.Page.ShouldNotBeNull().Title.ShouldContain(steps[2].Title);
    }

    [Fact]
    public void A_double_click_where_several_are_marked_marks_and_takes_nothing()
    {
        using var ui = Open();
        ui.Press(Key.CursorRight, Key.CursorRight, Key.CursorRight, Key.CursorRight, Key.Enter);
        var picker = ui.Desk.Picking.ShouldNotBeNull();
        picker.Several.ShouldBeTrue();
        var (x, y) = Find(ui, picker.Rows[1].Word);

        ui.Click(x, y, twice: true);

        ui.Desk.Picking.ShouldBe(picker);
        picker.At.ShouldBe(1);
    }

    [Fact]
    public void A_click_anywhere_breaks_nothing()
    {
        using var ui = Open();
        foreach (var key in "1234567e")
        {
            ui.Type(key.ToString());
            for (var y = 0; y < 24; y += 3)
            {
                for (var x = 0; x < 80; x += 13)
                    ui.Click(x, y);
            }

            ui.Press(Key.Esc, Key.Esc);
        }

        ui.Desk.Text.ShouldBe(Desks.SmallJob);
    }

    private static HeadlessUi Open() => new(JobFile.Unnamed(Desks.SmallJob), Desks.Quick);

    private static int Tab(HeadlessUi ui, string name) => ui.Screen.Split('\n')[1].IndexOf(name, StringComparison.Ordinal) + 1;

    private static string[] Rows(HeadlessUi ui) => ui.Screen.Split('\n');

    private static (int X, int Y) Find(HeadlessUi ui, string text)
    {
        var lines = Rows(ui);
        var y = Array.FindIndex(lines, 2, line => line.Contains(text, StringComparison.Ordinal));
        y.ShouldBeGreaterThan(0, text);
        return (lines[y].IndexOf(text, StringComparison.Ordinal), y);
    }
}
