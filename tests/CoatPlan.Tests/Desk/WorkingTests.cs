using CoatPlan.App.Desk;
using CoatPlan.Jobs;
using CoatPlan.Plans;

namespace CoatPlan.Tests.Desk;

public sealed class WorkingTests
{
    private static readonly PlanLimits Limits = new(10, 32, 10, 49, 0, 0.85, 3);

    [Fact]
    public void A_step_that_is_ticked_is_done_at_its_real_time_and_the_rest_moves()
    {
        var desk = Desks.Planned();
        desk.Do(Word.GoSequence);
        var first = desk.Step.ShouldNotBeNull();
        var later = first.End.PlusMinutes(45);

        desk.Do(Word.Mark);
        desk.Take($"{later:HH:mm}").ShouldBeTrue();
        desk.Take("25 min").ShouldBeTrue();
        desk.Take("took longer").ShouldBeTrue();

        desk.Job!.Done.ShouldHaveSingleItem().At.ShouldBe(later);
        desk.Job.Done[0].Note.ShouldBe("took longer");
        desk.Job.Done[0].Took.ShouldBe(Duration.FromMinutes(25));
        desk.Job.AsOf.ShouldBe(later);
        desk.Plan!.Steps.Where(step => !step.Done).ShouldAllBe(step => step.Start >= later);
        desk.Do(Word.Undo);
        desk.Text.ShouldBe(Desks.SmallJob);
    }

    [Fact]
    public void After_a_tick_the_next_step_to_do_is_chosen()
    {
        var desk = Desks.Planned();
        desk.Do(Word.GoSequence);
        var (first, second) = (desk.Plan!.Steps[0], desk.Plan.Steps[1]);

        Tick(desk);

        desk.Plan!.Steps.Single(step => step.Id == first.Id).Done.ShouldBeTrue();
        desk.Step.ShouldNotBeNull().Id.ShouldBe(second.Id);
        desk.Message.ShouldContain(first.Title);
        Tick(desk);
        desk.Job!.Done.Length.ShouldBe(2);
    }

    [Fact]
    public void The_choice_stays_with_its_step_when_the_plan_changes()
    {
        var desk = Desks.Planned();
        desk.Do(Word.GoSequence);
        while (desk.Step!.Spray is false)
            desk.Do(Word.Down);
        var coat = desk.Step;

        desk.Choose(1, SurfaceColumn.Condition);
        desk.Do(Word.GoSurfaces);
        desk.Pick(SurfaceColumn.Condition, "scaly rust");

        desk.Plan!.Steps.IndexOf(coat).ShouldBe(-1);
        desk.Step.ShouldNotBeNull().Id.ShouldBe(coat.Id);
    }

    [Fact]
    public void Readings_are_typed_and_never_taken_from_the_plan()
    {
        var desk = Desks.Planned();
        desk.Do(Word.GoSequence);
        while (desk.Step!.Limits is null)
            desk.Do(Word.Down);

        desk.Do(Word.Judge);

        desk.Typing.ShouldNotBeNull().Typed.ShouldBeEmpty();
        desk.Take("").ShouldBeFalse();
        desk.Judged.ShouldBeNull();
    }

    [Fact]
    public void A_step_without_limits_of_a_label_says_which_ones_have_them()
    {
        var desk = Desks.Planned();
        desk.Do(Word.GoSequence);

        desk.Do(Word.Judge);

        desk.Typing.ShouldBeNull();
        desk.Message.ShouldContain("choose a coat");
    }

    [Fact]
    public void A_step_that_is_ticked_already_is_not_ticked_again()
    {
        var desk = Desks.Planned();
        desk.Do(Word.GoSequence);
        Tick(desk);
        desk.Do(Word.Up);

        desk.Do(Word.Mark);

        desk.Typing.ShouldBeNull();
        desk.Message.ShouldContain("ticked already");
    }

    [Fact]
    public void Everything_about_a_step_is_read_on_a_page()
    {
        var desk = Desks.Planned();
        desk.Do(Word.GoSequence);
        while (desk.Step!.Limits is null)
            desk.Do(Word.Down);

        desk.Do(Word.Enter);

        var page = desk.Page.ShouldNotBeNull();
        page.Title.ShouldContain(desk.Step!.Title);
        foreach (var lead in new[] { "why", "slack", "air", "limits" })
            page.Lines.Select(line => line.Lead.Trim()).ShouldContain(lead);
        desk.Do(Word.Back);
        desk.Page.ShouldBeNull();
    }

    [Fact]
    public void What_was_read_before_a_coat_goes_into_the_job_with_its_tick()
    {
        var desk = Desks.Planned();
        desk.Do(Word.GoSequence);
        while (desk.Step!.Limits is null)
            desk.Do(Word.Down);
        var end = desk.Step.End;
        desk.Do(Word.Judge);
        desk.Take("68 F, 61 F, 55 %").ShouldBeTrue();
        desk.Judged.ShouldNotBeNull().IsGo.ShouldBeTrue();
        desk.Do(Word.Back);

        desk.Do(Word.Mark);
        foreach (var answer in new[] { $"{end:yyyy-MM-dd HH:mm}", "", "0.5", "" })
            desk.Take(answer).ShouldBeTrue(desk.Typing?.Complaint);

        desk.Text.ShouldContain("readings: {air: 68 F, metal: 61 F, humidity: 55 %}");
        desk.Job.ShouldNotBeNull().Done.ShouldHaveSingleItem().Readings.ShouldNotBeNull();
    }

    [Fact]
    public void A_time_that_is_none_is_refused()
    {
        var desk = Desks.Small();
        desk.Do(Word.GoSequence);
        desk.Do(Word.Mark);

        desk.Take("late").ShouldBeFalse();

        desk.Typing.ShouldNotBeNull().Complaint.ShouldNotBeNull().ShouldContain("late");
    }

    [Theory]
    [InlineData("68 F, 61 F, 55 %", true)]
    [InlineData("20 C, 16 °C, 55 %", true)]
    [InlineData("68 F, 48 F, 40 %", false)]
    [InlineData("68 F, 52 F, 60 %", false)]
    [InlineData("68 F, 66 F, 90 %", false)]
    [InlineData("95 F, 80 F, 30 %", false)]
    public void Readings_are_compared_with_the_limits(string readings, bool go)
    {
        GoNoGo.Of(Limits, readings, PrintUnits.Us).ShouldNotBeNull().IsGo.ShouldBe(go);
    }

    [Theory]
    [InlineData("")]
    [InlineData("68, 61, 55")]
    [InlineData("68 F, 61 F")]
    [InlineData("68 F, 61 F, 155 %")]
    [InlineData("680 F, 61 F, 55 %")]
    public void Readings_that_cannot_be_read_are_no_judgement(string readings)
    {
        GoNoGo.Of(Limits, readings, PrintUnits.Us).ShouldBeNull();
    }

    [Fact]
    public void Metal_near_the_dew_point_is_told_with_its_distance()
    {
        // 20 °C at 60 %: dew point 12.0 °C. Source: Magnus form with the coefficients of WMO-No. 8.
        var judged = GoNoGo.Of(Limits, "20 C, 14 C, 60 %", PrintUnits.Metric).ShouldNotBeNull();

        judged.IsGo.ShouldBeFalse();
        judged.Says[0].ShouldStartWith("OUTSIDE: metal is 2 °C above the dew point of 12 °C");
    }

    private static void Tick(JobDesk desk)
    {
        desk.Do(Word.Mark);
        while (desk.Typing is { } edit)
            desk.Take(edit.Typed).ShouldBeTrue(edit.Complaint);
    }
}
