using CoatPlan.App;
using CoatPlan.App.Desk;
using CoatPlan.App.Wording;
using CoatPlan.Tests.Screens;
using Terminal.Gui.Input;

namespace CoatPlan.Tests.Desk;

public sealed class StationsTests
{
    private static readonly string Class = Desks.SmallJob.Replace("  people: 1\n", "  people: 1\n  stations: 3\n", StringComparison.Ordinal);

    [Fact]
    public void The_sequence_of_a_class_lists_one_station_at_a_time_where_one_is_chosen()
    {
        var desk = Planned(Class);
        desk.Do(Word.GoSequence);
        desk.StationAt.ShouldBeNull();
        desk.Do(Word.Right);
        desk.Do(Word.Right);

        desk.StationAt.ShouldBe(2);
        desk.Step.ShouldNotBeNull().Station.ShouldBe(2);
        var chosen = new List<string>();
        desk.Do(Word.First);
        for (var before = ""; desk.Step!.Id != before; desk.Do(Word.Down))
        {
            before = desk.Step.Id;
            chosen.Add(before);
        }

        chosen.Distinct().ShouldBe(desk.Plan!.Steps.Where(step => step.Station is 2 or null).Select(step => step.Id));
        desk.Do(Word.Left);
        desk.Do(Word.Left);
        desk.StationAt.ShouldBeNull();
        desk.Do(Word.Left);
        desk.StationAt.ShouldBeNull();
    }

    [Fact]
    public void After_a_tick_the_next_step_of_the_station_is_chosen()
    {
        var desk = Planned(Class);
        desk.Do(Word.GoSequence);
        for (var station = 1; station <= 3; station++)
            desk.Do(Word.Right);
        desk.Do(Word.First);
        var ticked = desk.Step!;

        desk.Do(Word.Mark);
        desk.Take(Clock.Time(ticked.End)).ShouldBeTrue();
        desk.Take("").ShouldBeTrue();
        desk.Take("").ShouldBeTrue();

        desk.Step.ShouldNotBeNull().Id.ShouldNotBe(ticked.Id);
        desk.Step.Station.ShouldBe(3);
    }

    [Fact]
    public void A_step_of_another_station_that_is_chosen_on_the_timeline_takes_the_list_to_its_station()
    {
        var desk = Planned(Class);
        desk.Do(Word.GoSequence);
        desk.Do(Word.Right);
        desk.Do(Word.GoTimeline);

        while (desk.Step!.Station == 1)
            desk.Do(Word.Right);

        desk.StationAt.ShouldBe(desk.Step.Station);
    }

    [Fact]
    public void Stations_that_are_taken_away_leave_every_step_listed()
    {
        var desk = Planned(Class);
        desk.Do(Word.GoSequence);
        desk.Do(Word.Right);
        desk.Do(Word.Right);
        desk.Do(Word.GoFields);
        ChooseField(desk, "crew");
        desk.Do(Word.Enter);
        ChooseField(desk, "stations");

        desk.Do(Word.Delete);

        desk.Stations.ShouldBe(0);
        desk.StationAt.ShouldBeNull();
        desk.Do(Word.GoSequence);
        desk.Do(Word.Right);
        desk.StationAt.ShouldBeNull();
        desk.Message.ShouldContain("one crew");
    }

    [Fact]
    public void The_station_stands_in_the_heading_of_the_day()
    {
        using var ui = new HeadlessUi(JobFile.Unnamed(Class), JobSource.Workshop(Sources.Usual));
        ui.Type("2");
        ui.Picture.ShouldContain("Station 2:");

        ui.Press(Key.CursorRight);

        ui.Picture.ShouldContain("station 1 of 3");
        ui.Picture.ShouldContain("Left/Right station");
        ui.Picture.ShouldNotContain("Station 2:");
        // Above the list, and with the chosen step, but in no row.
        ui.Picture.Split("Station 1:").Length.ShouldBe(2);
    }

    private static JobDesk Planned(string job) => new(JobFile.Unnamed(job), JobSource.Workshop(Sources.Usual), static work => work(), static work => work());

    private static void ChooseField(JobDesk desk, string name)
    {
        desk.Do(Word.First);
        while (desk.Outline.Rows[desk.FieldAt].Name != name)
            desk.Do(Word.Down);
    }
}
