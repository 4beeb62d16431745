using CoatPlan.Sheets.Content;
using CoatPlan.Tests.Plans;

namespace CoatPlan.Tests.Sheets;

public class TagSheetTests
{
    [Fact]
    public void Every_piece_that_comes_off_has_a_tag_with_its_number()
    {
        var plan = SheetSamples.Roadster();
        var tags = TagSheet.Of(plan)!.Blocks.OfType<Tags>().Single().Items;

        tags.Select(tag => (tag.Number, tag.Name)).ShouldBe(
            plan.Surfaces.Where(surface => !surface.Stays).SelectMany(surface => Enumerable.Repeat(($"{surface.Tag}", surface.Name), surface.Count)));
        tags.ShouldAllBe(tag => tag.Blanks.Contains("bag") && tag.Blanks.Contains("photograph") && tag.Blanks.Contains("which way round"));
        tags.Where(tag => tag.Number == "2").Select(tag => tag.Lines[0]).ShouldBe(["Piece 1 of 2", "Piece 2 of 2"]);
    }

    [Fact]
    public void Everything_tagged_goes_back_on_once()
    {
        var plan = SheetSamples.Roadster();
        var rows = TagSheet.Of(plan)!.Blocks.OfType<Grid>().Single().Rows;

        rows.Select(row => row[1]).Order().ShouldBe(plan.Surfaces.Where(surface => surface.Tag is not null).Select(surface => $"{surface.Tag}").Order());
        rows.Select(row => row[4]).ShouldBe(plan.Steps.Where(step => step.Kind == "refit").SelectMany(step => step.Surfaces.Select(_ => PlanWords.Moment(step.Start))));
    }

    [Fact]
    public void A_job_from_which_nothing_comes_off_has_no_tags()
    {
        var plan = SamplePlan.Weekend();

        TagSheet.Of(plan with { Surfaces = [.. plan.Surfaces.Where(surface => surface.Stays)] }).ShouldBeNull();
    }

    [Fact]
    public void Each_station_of_a_class_tags_its_own_pieces()
    {
        var tags = TagSheet.Of(SheetSamples.Class())!.Blocks.OfType<Tags>().Single().Items;

        tags.Length.ShouldBe(12);
        tags.Select(tag => (tag.Number, tag.Lines[0])).ShouldBeUnique();
    }
}
