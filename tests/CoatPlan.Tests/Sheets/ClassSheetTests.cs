using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Pdf;
using CoatPlan.Tests.Plans;

namespace CoatPlan.Tests.Sheets;

public class ClassSheetTests
{
    [Fact]
    public void Each_station_has_a_handout_with_its_own_steps_and_no_other()
    {
        var plan = SheetSamples.Class();
        var blocks = StationSheet.Of(plan)!.Blocks;
        var starts = blocks.Select((block, index) => (block, index)).Where(pair => pair.block is NewPage).Select(pair => pair.index).Append(blocks.Length).ToArray();

        starts.Length.ShouldBe(7);
        for (var station = 1; station <= 6; station++)
        {
            var handout = blocks[starts[station - 1]..starts[station]].Where(block => block is not Closing).ToArray();
            handout[0].ShouldBe(new NewPage($"Station {station}"));
            handout.OfType<WorkStep>().Select(step => (step.When, step.Title)).ShouldBe(
                plan.Steps.Where(step => step.Station == station).Select(step => (PlanWords.Span(step.Start, step.End), step.Title)));
        }
    }

    [Fact]
    public void A_coat_on_a_handout_has_room_for_the_students_readings()
    {
        var plan = SheetSamples.Class();
        var coats = plan.Steps.Count(step => step.Coat is not null);

        StationSheet.Of(plan)!.Blocks.OfType<WorkStep>().Count(step => step.Readings.Length == 4).ShouldBe(coats);
    }

    [Fact]
    public void Each_page_of_a_handout_names_its_station()
    {
        var pages = SheetSamples.Pages(StationSheet.Of(SheetSamples.Class())!, PaperSize.A4);

        pages.ShouldAllBe(page => SheetSamples.Words(ImmutableArray.Create(page)).Contains("Station handouts Station "));
    }

    [Fact]
    public void A_handout_is_numbered_by_itself_too()
    {
        var pages = SheetSamples.Pages(StationSheet.Of(SheetSamples.Class())!, PaperSize.Letter);
        var words = pages.Select(page => SheetSamples.Words([page])).ToArray();

        for (var station = 1; station <= 6; station++)
        {
            var own = words.Where(page => page.Contains($"Station {station}: page ", StringComparison.Ordinal)).ToArray();
            for (var page = 0; page < own.Length; page++)
                own[page].ShouldEndWith($"Station {station}: page {page + 1} of {own.Length}");
        }
    }

    [Fact]
    public void A_job_with_one_crew_has_no_handouts() => StationSheet.Of(SamplePlan.Weekend()).ShouldBeNull();

    [Fact]
    public void The_teachers_sheet_tells_each_shared_step_of_a_period_once_and_leaves_no_station_out()
    {
        var plan = SheetSamples.Class();
        var told = WorkSheet.Of(plan).Blocks.OfType<WorkStep>().ToArray();

        told.Sum(step => step.Ticks.Length).ShouldBe(plan.Steps.Length);
        told.ShouldAllBe(step => step.Ticks.Distinct().Count() == step.Ticks.Length);
        told.Length.ShouldBeLessThan(plan.Steps.Length / 2);
        SheetSamples.Pages(WorkSheet.Of(plan), PaperSize.A4).Length.ShouldBeLessThan(10);
    }

    [Fact]
    public void The_last_starts_of_all_stations_stay_on_the_teachers_sheet()
    {
        var plan = SheetSamples.Class();
        var details = string.Join(' ', WorkSheet.Of(plan).Blocks.OfType<WorkStep>().SelectMany(step => step.Details));

        foreach (var step in plan.Steps.Where(step => step.LastSafeStart is not null))
            details.ShouldContain($"{PlanWords.Span(step.Start, step.End)}, last start inside its windows {PlanWords.Moment(step.LastSafeStart!.Value)}");
    }

    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public void The_class_hangs_on_the_wall_as_one_page(PaperSize paper) =>
        SheetSamples.Pages(SafetySheet.Of(SheetSamples.Class()), paper).ShouldHaveSingleItem();

    [Fact]
    public void Tape_that_lies_as_long_on_several_stations_takes_one_line()
    {
        var plan = SheetSamples.Class();
        var lines = SafetySheet.Of(plan).Blocks.OfType<Columns>().Single().Parts.OfType<Bullets>().SelectMany(bullets => bullets.Items).Where(item => item.Contains(": on ")).ToArray();

        lines.ShouldBeUnique();
        lines.Length.ShouldBeLessThanOrEqualTo(plan.Steps.Count(step => step.Kind == "unmask") / 2);
    }

    [Theory]
    [InlineData("station 3", 3)]
    [InlineData("stations 1 and 2", 1, 2)]
    [InlineData("stations 1 to 3", 3, 1, 2)]
    [InlineData("stations 1 to 3, 5 and 7", 1, 2, 3, 5, 7)]
    [InlineData("stations 1 and 3 to 6", 1, 3, 4, 5, 6)]
    public void Stations_are_named_in_runs(string words, params int[] stations) => StationWords.Of(stations.Select(station => (int?)station)).ShouldBe(words);
}
