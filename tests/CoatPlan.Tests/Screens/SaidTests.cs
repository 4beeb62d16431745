using CoatPlan.App.Desk;
using CoatPlan.App.Screens;
using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Desk;
using Terminal.Gui.Input;

namespace CoatPlan.Tests.Screens;

/// <summary>What is asked and complained of is read whole, however narrow the terminal is.</summary>
public sealed class SaidTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 16)]
    public void A_question_on_the_line_below_is_not_cut_by_what_is_typed(int width, int height)
    {
        using var ui = Open(width, height);
        ui.Type("2");
        ui.Press(Key.Home, Key.Space);
        var asks = ui.Desk.Typing.ShouldNotBeNull().Asks;

        Flat(ui).ShouldContain(asks);
        Rows(ui)[height - FrameScreen.RowsBelow].ShouldStartWith($"> {ui.Desk.Typing!.Typed}");
    }

    [Fact]
    public void A_complaint_about_it_stands_whole_beside_the_question()
    {
        using var ui = Open(60, 16);
        ui.Type("2");
        ui.Press(Key.Home, Key.Space);
        ui.Press(Key.U.WithCtrl);
        ui.Type("late");

        ui.Press(Key.Enter);

        Flat(ui).ShouldContain(ui.Desk.Typing.ShouldNotBeNull().Asks);
        Flat(ui).ShouldContain($"! {ui.Desk.Typing!.Complaint}");
        Rows(ui)[16 - FrameScreen.RowsBelow].ShouldStartWith("> late");
    }

    [Fact]
    public void A_long_message_takes_rows_of_its_own_and_covers_none_of_the_place()
    {
        using var folder = new TempFolder();
        using var ui = Open(60, 24);
        ui.Type("6");
        var end = Rows(ui)[24 - FrameScreen.RowsBelow - 1];
        end.ShouldStartWith("-- ");
        ui.Type("w");
        ui.Press(Key.U.WithCtrl);
        ui.Type($"{folder.Path}/{new string('x', 300)}");

        ui.Press(Key.Enter);

        var rows = Rows(ui);
        ui.Desk.Typing.ShouldNotBeNull().Complaint.ShouldNotBeNull().Length.ShouldBeGreaterThan(120);
        var rule = Array.FindIndex(rows, row => row.StartsWith("──", StringComparison.Ordinal));
        rows[rule - 1].ShouldStartWith("-- ");
    }

    [Fact]
    public void A_complaint_about_a_cell_covers_no_row_of_the_table()
    {
        using var ui = Open(60, 16);
        ui.Press(Key.CursorDown, Key.CursorRight, Key.Enter, Key.U.WithCtrl);
        ui.Type("a great many of them, more than anybody could count in a day");

        ui.Press(Key.Enter);

        ui.Desk.Typing.ShouldNotBeNull().Complaint.ShouldNotBeNull();
        Flat(ui).ShouldContain($"! {ui.Desk.Typing!.Complaint}");
        ui.Screen.ShouldContain("Inner fender");
        ui.Screen.ShouldContain("a great many");
    }

    [Fact]
    public void What_was_said_is_over_with_the_next_key()
    {
        using var ui = Open();
        ui.Type("2");
        ui.Press(Key.Home);
        ui.Type("g");
        ui.Screen.ShouldContain("choose a coat");

        ui.Press(Key.CursorDown);

        ui.Screen.ShouldNotContain("choose a coat");
    }

    [Fact]
    public void What_is_typed_is_emptied_with_one_key()
    {
        using var ui = Open();
        ui.Press(Key.Enter, Key.U.WithCtrl);
        ui.Type("Splash shield");

        ui.Press(Key.Enter);

        ui.Desk.Surface!.Name.ShouldBe("Splash shield");
    }

    [Fact]
    public void A_list_that_was_narrowed_shows_all_of_it_with_the_same_key()
    {
        using var ui = Open();
        ui.Press(Key.CursorRight, Key.CursorRight, Key.Enter);
        var all = ui.Desk.Picking.ShouldNotBeNull().Rows.Length;
        ui.Type("cast");
        ui.Desk.Picking!.Rows.Length.ShouldBeLessThan(all);

        ui.Press(Key.U.WithCtrl);

        ui.Desk.Picking.Rows.Length.ShouldBe(all);
    }

    [Fact]
    public void Help_opens_while_a_value_is_typed_and_what_was_typed_is_there_again()
    {
        using var ui = Open();
        ui.Press(Key.Enter, Key.U.WithCtrl);
        ui.Type("Half a na");

        ui.Press(Key.F1);
        ui.Screen.ShouldContain("Moving about");
        ui.Press(Key.Esc);
        ui.Type("me");
        ui.Press(Key.Enter);

        ui.Desk.Surface!.Name.ShouldBe("Half a name");
    }

    [Fact]
    public void Help_opens_over_the_guide_too()
    {
        using var ui = Open();
        ui.Desk.Guide(new LocalDateTime(2027, 5, 14, 16, 0));

        ui.Press(Key.F1);
        ui.Screen.ShouldContain("Moving about");
        ui.Press(Key.Esc);

        ui.Screen.ShouldContain("Whom is the job for?");
    }

    [Fact]
    public void An_explanation_that_takes_more_rows_moves_the_answer_down()
    {
        const string explains = "What stands there is the usual figure; length times width of what is sprayed is good enough. Shapes can be added up later.";
        using var ui = Open(width: 60);
        ui.Desk.Guide(new LocalDateTime(2027, 5, 14, 16, 0));
        for (var asked = 0; ui.Desk.GuideAsks!.Explains != explains; asked++)
        {
            asked.ShouldBeLessThan(20);
            ui.Press(Key.Enter);
        }

        string.Join(' ', ui.Screen.Split('\n').Select(line => line.Trim())).ShouldContain(explains);
        ui.Screen.ShouldContain(ui.Desk.GuideAsks.Typed);
    }

    [Fact]
    public void The_guide_asks_once_on_screen_and_names_its_own_keys()
    {
        using var ui = Open();
        ui.Desk.Guide(new LocalDateTime(2027, 5, 14, 16, 0));
        ui.Press(Key.Enter);

        ui.Screen.Split("What shall the job be called?").Length.ShouldBe(2);
        ui.Screen.Split("the question before").Length.ShouldBe(2);
        ui.Screen.ShouldNotContain("leave as it was");
        ui.Screen.ShouldContain("question 2");
    }

    [Fact]
    public void Reading_past_the_end_of_a_page_needs_no_keys_to_come_back()
    {
        using var ui = Open();
        ui.Type("5");
        ui.Press(Key.End, Key.PageDown, Key.PageDown);
        var end = ui.Screen;
        end.ShouldContain("-- end --");

        ui.Press(Key.CursorUp);

        ui.Screen.ShouldNotBe(end);
        ui.Screen.ShouldContain("-- 1 more");
    }

    private static string[] Rows(HeadlessUi ui) => [.. ui.Picture.Split('\n')];

    private static string Flat(HeadlessUi ui) => string.Join(' ', Rows(ui).Select(row => row.Trim()));

    private static HeadlessUi Open(int width = 80, int height = 24) => new(JobFile.Unnamed(Desks.SmallJob), Desks.Quick, width, height);
}
