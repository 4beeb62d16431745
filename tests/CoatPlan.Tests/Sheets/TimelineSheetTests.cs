using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Drawing;
using CoatPlan.Sheets.Pdf;
using CoatPlan.Tests.Plans;
using UglyToad.PdfPig.Content;

namespace CoatPlan.Tests.Sheets;

public class TimelineSheetTests
{
    private static readonly ImmutableArray<TimelineKind> Work = [TimelineKind.Hands, TimelineKind.Dust, TimelineKind.Spray];

    [Fact]
    public void Each_step_is_worked_on_in_its_own_hours_of_its_own_day()
    {
        foreach (var plan in (Plan[])[SamplePlan.Weekend(), SheetSamples.Roadster()])
        {
            var drawn = Of(plan).Days.SelectMany(day => day.Lanes).SelectMany(lane => lane.Bars).Where(bar => Work.Contains(bar.Kind)).ToArray();

            foreach (var step in plan.Steps)
            {
                drawn.ShouldContain(bar => bar.From == step.Start, step.Id);
                drawn.ShouldContain(bar => bar.To == step.End, step.Id);
            }

        }
    }

    [Fact]
    public void A_step_that_goes_on_the_next_morning_is_not_drawn_over_the_night()
    {
        var plan = SamplePlan.Weekend();
        var broken = plan.Steps[3] with { Start = SamplePlan.At(14, 20, 40), End = SamplePlan.At(15, 8, 25), HandsMin = 45 };
        plan = plan with { Steps = [.. plan.Steps.Take(3), broken, .. plan.Steps.Skip(4)] };

        var drawn = Of(plan).Days.SelectMany(day => day.Lanes).SelectMany(lane => lane.Bars).Where(bar => Work.Contains(bar.Kind));
        drawn.Sum(bar => Minutes(bar.From, bar.To)).ShouldBe(plan.Steps.Sum(step => (long)step.HandsMin));
    }

    [Fact]
    public void A_window_ends_with_the_last_safe_start_of_its_coat()
    {
        var plan = SheetSamples.Roadster();
        var ends = Of(plan).Days.SelectMany(day => day.Lanes).SelectMany(lane => lane.Bars).Where(bar => bar.Kind == TimelineKind.Window).Select(bar => bar.To);

        ends.Order().ShouldBe(plan.Steps.Select(step => step.LastSafeStart).OfType<LocalDateTime>().Order());
    }

    [Fact]
    public void The_curves_are_the_plans_air()
    {
        var plan = SheetSamples.Roadster();
        var drawn = Of(plan).Days.SelectMany(day => day.Air).Select(one => (one.At, one.AirC, one.MetalC, one.DewPointC)).Distinct();

        drawn.ShouldBe(plan.AirHours.Select(one => (one.At, one.AirC, one.SurfaceC, one.DewPointC)));
    }

    [Fact]
    public void Stations_that_do_the_same_at_the_same_time_share_a_lane()
    {
        var plan = SamplePlan.Weekend();
        var steps = plan.Steps.SelectMany(step => Enumerable.Range(1, 4).Select(station => step with { Id = $"{step.Id}@{station}", Station = station, After = [] })).ToImmutableArray();
        var shifted = steps.Select(step => step.Station == 3 && step.Batch is not null ? step with { Start = step.Start.PlusMinutes(1), End = step.End.PlusMinutes(1) } : step);

        Of(plan with { Steps = [.. shifted] }).Days[1].Lanes.Select(lane => lane.Title).ShouldBe(
            ["whole job: stations 1 to 4", "Inner fender (2), Battery tray: stations 1, 2 and 4", "Inner fender (2), Battery tray: station 3"], ignoreOrder: true);
    }

    [Fact]
    public void Days_without_work_take_one_line_together()
    {
        var plan = SamplePlan.Weekend();
        var last = plan.Steps[^1];
        plan = plan with { Steps = [.. plan.Steps.SkipLast(1), last with { Start = last.Start.PlusDays(4), End = last.End.PlusDays(4) }] };

        Of(plan).Days.Select(day => day.Title).ShouldBe(
            ["Friday 14 May 2027", "Saturday 15 May 2027", "Sunday 16 May 2027", "Monday 17 May 2027 to Wednesday 19 May 2027: no work", "Thursday 20 May 2027"]);
    }

    [Theory]
    [InlineData(PaperSize.Letter, 792)]
    [InlineData(PaperSize.A4, 842)]
    public void The_weekend_is_one_picture_drawn_tight_where_it_must_be(PaperSize paper, double width)
    {
        var page = SheetSamples.Pages(TimelineSheet.Of(SheetSamples.Roadster()), paper).ShouldHaveSingleItem();

        page.Width.ShouldBe(width, 1);
        Math.Round(LineOfCurves(page), 1).ShouldBeOneOf(TimelineSpacing.Tight.CurveLine, TimelineSpacing.Roomy.CurveLine);
    }

    [Fact]
    public void What_takes_several_pages_anyway_is_not_drawn_tight()
    {
        var pages = SheetSamples.Pages(TimelineSheet.Of(SheetSamples.Class()), PaperSize.A4);

        pages.Length.ShouldBeGreaterThan(1);
        LineOfCurves(pages[0]).ShouldBe(TimelineSpacing.Roomy.CurveLine, 0.1);
    }

    // From the name of the first curve in the margin to that of the second.
    private static double LineOfCurves(Page page)
    {
        double Baseline(string name) => page.GetWords().First(word => word.Text == name && word.BoundingBox.Left < 60).Letters[0].StartBaseLine.Y;
        return Baseline("air") - Baseline("metal");
    }

    [Fact]
    public void Nothing_placed_has_no_picture() => TimelineSheet.Of(SamplePlan.Nothing()).Blocks.OfType<Timeline>().ShouldBeEmpty();

    [Fact]
    public void An_hour_stands_under_itself_on_every_day_and_idle_hours_are_narrow()
    {
        var scale = new HourScale([8, 9, 10, 11, 13, 14], 240);
        var day = new LocalDate(2027, 5, 14);

        scale.Hour(24).ShouldBe(240, 1e-9);
        scale.At(day.At(new LocalTime(9, 30)), day).ShouldBe((scale.Hour(9) + scale.Hour(10)) / 2, 1e-9);
        scale.At(day.PlusDays(1).AtMidnight(), day).ShouldBe(240, 1e-9);
        (scale.Hour(13) - scale.Hour(12)).ShouldBeLessThan(scale.Hour(12) - scale.Hour(11));
        Enumerable.Range(0, 24).ShouldAllBe(hour => scale.Hour(hour + 1) > scale.Hour(hour));
    }

    private static Timeline Of(Plan plan) => TimelineSheet.Of(plan).Blocks.OfType<Timeline>().Single();

    private static long Minutes(LocalDateTime from, LocalDateTime to) => Period.Between(from, to, PeriodUnits.Minutes).Minutes;
}
