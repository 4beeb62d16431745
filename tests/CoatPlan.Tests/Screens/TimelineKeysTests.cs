using CoatPlan.App.Desk;
using CoatPlan.Tests.Desk;
using Terminal.Gui.Input;

namespace CoatPlan.Tests.Screens;

public sealed class TimelineKeysTests
{
    [Fact]
    public void Down_goes_to_the_day_after_and_up_to_the_day_before()
    {
        using var ui = Open();
        ui.Type("4");
        ui.Press(Key.Home);
        var first = DayOf(ui);
        ui.Press(Key.CursorDown);
        var second = DayOf(ui);
        second.ShouldBeGreaterThan(first);

        ui.Press(Key.CursorUp);

        DayOf(ui).ShouldBe(first);
        Detail(ui).ShouldContain($"{ui.Desk.Step!.Start:HH:mm}");
    }

    [Fact]
    public void Up_stays_on_the_first_day()
    {
        using var ui = Open();
        ui.Type("4");
        ui.Press(Key.Home);
        var first = DayOf(ui);

        ui.Press(Key.CursorUp, Key.CursorUp);

        DayOf(ui).ShouldBe(first);
    }

    [Fact]
    public void Minus_shows_the_hours_that_plus_pushed_out_again()
    {
        using var ui = Open();
        ui.Type("4");
        var whole = ui.Picture;
        ui.Type("++");
        var closer = ui.Picture;
        HoursShown(ui).ShouldBeLessThan(24);

        ui.Type("-");
        ui.Picture.ShouldNotBe(closer);
        ui.Type("-");
        ui.Picture.ShouldBe(whole);
        ui.Type("-");

        HoursShown(ui).ShouldBe(24);
    }

    private static HeadlessUi Open() => new(JobFile.Unnamed(Desks.SmallJob), Desks.Quick);

    private static LocalDate DayOf(HeadlessUi ui) => ui.Desk.Step.ShouldNotBeNull().Start.Date;

    private static string Detail(HeadlessUi ui) => ui.Picture.Split('\n').First(line => line.StartsWith('▼'));

    private static int HoursShown(HeadlessUi ui)
    {
        // The mark of the chosen step stands over a digit of its hour.
        var ruler = ui.Picture.Split('\n')[2][8..];
        return ruler.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length;
    }
}
