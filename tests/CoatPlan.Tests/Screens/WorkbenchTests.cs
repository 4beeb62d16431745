using CoatPlan.App;
using CoatPlan.App.Desk;
using CoatPlan.App.Screens;
using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Desk;
using CoatPlan.Tests.Plans;
using Terminal.Gui.Input;

namespace CoatPlan.Tests.Screens;

public sealed class WorkbenchTests : IDisposable
{
    private readonly TempFolder folder = new();

    private readonly string path;

    public WorkbenchTests() => path = folder.File("bay.job.yaml", Desks.SmallJob);

    [Fact]
    public void A_job_is_opened_changed_undone_and_saved_by_keys_alone()
    {
        using var ui = Open();
        ui.Screen.ShouldContain("Inner fender");
        var totals = Totals(ui);

        ui.Press(Right(5));
        ui.Press(Key.Enter);
        ui.Press(Key.A.WithCtrl, Key.Delete);
        ui.Type("80 ft2");
        ui.Press(Key.Enter);

        ui.Screen.ShouldContain("80 ft²");
        Totals(ui).ShouldNotBe(totals);
        ui.Screen.ShouldContain("(not saved)");

        ui.Press(Key.Z.WithCtrl);
        Totals(ui).ShouldBe(totals);
        ui.Press(Key.Y.WithCtrl, Key.S.WithCtrl);

        ui.Screen.ShouldNotContain("(not saved)");
        File.ReadAllText(path).ShouldBe(Desks.SmallJob.Replace("8 ft2", "80 ft2", StringComparison.Ordinal));
    }

    [Fact]
    public void A_surface_is_moved_up_and_down_and_stays_chosen()
    {
        using var ui = Open();
        ui.Press(Key.CursorDown);
        ui.Type("<");
        Names(ui).ShouldBe(["Bracket", "Inner fender"]);
        ui.Desk.Surface!.Name.ShouldBe("Bracket");

        ui.Press(Key.CursorDown.WithAlt);
        Names(ui).ShouldBe(["Inner fender", "Bracket"]);
        ui.Press(Key.CursorUp.WithAlt, Key.CursorUp.WithAlt);

        Names(ui).ShouldBe(["Bracket", "Inner fender"]);
        ui.Screen.IndexOf("Bracket", StringComparison.Ordinal).ShouldBeLessThan(ui.Screen.IndexOf("Inner fender", StringComparison.Ordinal));
    }

    [Fact]
    public void A_mistake_is_explained_on_screen_and_what_was_typed_stays()
    {
        using var ui = Open();
        ui.Press(Right(5));
        ui.Press(Key.Enter);
        ui.Press(Key.A.WithCtrl, Key.Delete);
        ui.Type("9 fish");

        ui.Press(Key.Enter);

        ui.Screen.ShouldContain("9 fish");
        ui.Screen.ShouldContain("! ");
        ui.Press(Key.Esc);
        ui.Screen.ShouldContain("8 ft²");
    }

    [Fact]
    public void Every_printable_key_reaches_the_field_while_a_value_is_typed()
    {
        using var ui = Open();
        ui.Press(Key.Enter);
        ui.Press(Key.A.WithCtrl, Key.Delete);
        const string printable = "1234567890?<>+-acmw \"#$%&'()*,./:;=@[]^_`{|}~ÄßéZ";

        ui.Type(printable);
        ui.Press(Key.Enter);

        ui.Desk.Surface!.Name.ShouldBe(printable);
    }

    [Fact]
    public void A_picker_narrows_while_typing_and_takes_what_is_chosen()
    {
        using var ui = Open();
        ui.Press(Right(2));
        ui.Press(Key.Enter);
        ui.Type("cast al");
        ui.Screen.ShouldContain("only what holds: cast al");

        ui.Press(Key.Enter);

        ui.Desk.Surface!.Material.ShouldBe("cast aluminium");
    }

    [Fact]
    public void Each_place_has_its_digit_and_tab_goes_round()
    {
        using var ui = Open();
        foreach (var (digit, name) in new[] { ("2", "[2 Sequence]"), ("3", "[3 Supplies]"), ("4", "[4 Timeline]"), ("5", "[5 Air & safety]"), ("6", "[6 Sheets]"), ("7", "[7 Fields]"), ("1", "[1 Surfaces]") })
        {
            ui.Type(digit);
            ui.Screen.ShouldContain(name);
        }

        var places = Enum.GetValues<DeskPlace>().Length;
        for (var round = 0; round < 2 * places; round++)
            ui.Press(Key.Tab);
        ui.Screen.ShouldContain("[1 Surfaces]");
        ui.Press(Key.Tab.WithShift);
        ui.Desk.Place.ShouldBe(Enum.GetValues<DeskPlace>()[^1]);
    }

    [Fact]
    public void Words_of_the_table_are_whole_where_the_columns_together_have_room()
    {
        using var ui = Open(width: 90);

        ui.Screen.Split('\n').First(line => line.StartsWith("Inner fender ", StringComparison.Ordinal))
            .ShouldMatch("steel +factory paint +chips, oily .*all-black ");
    }

    [Fact]
    public void The_title_of_the_chosen_sheet_shows_however_narrow_the_place()
    {
        var desk = Desks.Small();
        for (var sheet = 0; sheet < desk.Sheets.Length; sheet++)
        {
            desk.ChooseSheet(sheet);
            var canvas = new Canvas(30, 8);
            SheetsScreen.Draw(canvas, desk);

            canvas.Line(0).ShouldContain($"[{desk.Sheets[sheet].Title}]");
            SheetsScreen.At(canvas.Width, canvas.Line(0).IndexOf('['), desk).ShouldBe(sheet);
        }
    }

    [Fact]
    public void A_step_longer_than_an_hour_says_all_of_its_time_and_its_mark_stands_apart()
    {
        var plan = SamplePlan.Weekend();
        var planned = PlannedJob.Alone(plan with { Steps = [.. plan.Steps.Select(step => step with { HandsMin = 85, Spray = true })] });
        using var ui = new HeadlessUi(JobFile.Unnamed(Desks.SmallJob), Desks.Quick with { Sketch = (_, _) => planned, Plan = (_, _) => planned });

        ui.Type("2");

        ui.Screen.ShouldContain(" 1 h 25 min * ");
    }

    [Fact]
    public void Help_lists_every_key()
    {
        using var ui = Open(height: 80);

        ui.Press(Key.F1);

        foreach (var row in Keys.All)
            ui.Screen.ShouldContain(row.Pressed[0].Name);
        ui.Press(Key.Esc);
        ui.Screen.ShouldContain("[1 Surfaces]");
        ui.Desk.Helping.ShouldBeFalse();
    }

    [Fact]
    public void The_menu_does_what_is_chosen_in_it()
    {
        using var ui = Open();

        ui.Press(Key.F10);
        ui.Type("copy");
        ui.Press(Key.Enter);
        ui.Idle();

        ui.Desk.Job!.Surfaces.Length.ShouldBe(3);
    }

    [Fact]
    public void Leaving_with_unsaved_work_asks_and_esc_stays()
    {
        using var ui = Open();
        ui.Type("c");

        ui.Press(Key.Esc, Key.Esc, Key.Q.WithCtrl);

        ui.Screen.ShouldContain("unsaved changes");
        ui.Press(Key.Esc);
        ui.Desk.Left.ShouldBeFalse();
        ui.Screen.ShouldContain("Inner fender");
    }

    [Fact]
    public void No_colour_is_written_where_nobody_wants_any()
    {
        using var ui = Open(palette: Palette.Colourless);
        var colour = new System.Text.RegularExpressions.Regex(@"\e\[[0-9;]*\b(3[0-8]|4[0-8]|9[0-7]|10[0-7])\b[0-9;]*m");
        foreach (var key in new[] { Key.D1, Key.D2, Key.D3, Key.D4, Key.D5, Key.D6, Key.D7, Key.F1 })
        {
            ui.Press(key);
            colour.Matches(ui.Ansi).Select(match => match.Value).ShouldBeEmpty();
        }
    }

    [Theory]
    [InlineData(60, 16)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(250, 80)]
    public void Every_place_draws_at_every_size(int width, int height)
    {
        using var ui = Open(width, height);
        foreach (var key in new[] { Key.D1, Key.D2, Key.D3, Key.D4, Key.D5, Key.D6, Key.D7, Key.F10, Key.Esc, Key.F1, Key.Esc })
        {
            ui.Press(key);
            ui.Screen.TrimEnd('\n').Split('\n').Length.ShouldBe(height);
            ui.Screen.ShouldContain(Totals(ui).Trim()[..10]);
        }
    }

    [Fact]
    public void A_terminal_that_is_too_small_is_told_so_and_nothing_is_lost_when_it_grows()
    {
        using var ui = Open();
        ui.Type("c");

        ui.Resize(30, 8);
        ui.Screen.ShouldContain("needs 60");
        ui.Resize(80, 24);

        ui.Screen.ShouldContain("Inner fender");
        ui.Desk.Job!.Surfaces.Length.ShouldBe(3);
    }

    [Fact]
    public void A_file_with_mistakes_shows_them_with_their_lines()
    {
        File.WriteAllText(path, Desks.SmallJob.Replace("coats: 2", "coats: two", StringComparison.Ordinal));

        using var ui = Open();

        ui.Screen.ShouldContain("coats: two");
        ui.Screen.ShouldContain("mistake");
    }

    public void Dispose() => folder.Dispose();

    private static Key[] Right(int times) => [.. Enumerable.Repeat(Key.CursorRight, times)];

    private static string[] Names(HeadlessUi ui) => [.. ui.Desk.Job!.Surfaces.Select(surface => surface.Name)];

    private static string Totals(HeadlessUi ui) => TotalsScreen.Text(ui.Desk);

    private HeadlessUi Open(int width = 80, int height = 24, Palette? palette = null) =>
        new(JobFile.Open(path), Desks.Quick, width, height, palette);
}
