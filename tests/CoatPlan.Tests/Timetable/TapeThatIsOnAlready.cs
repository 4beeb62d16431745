using CoatPlan.Plans;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Timetable;

/// <summary>Tape that went on before the plan was made, its limit 24 hours: worked by hand from the clock.</summary>
public class TapeThatIsOnAlready
{
    private const string Masked = "{surface: plate, operation: mask, at: 2027-05-14 09:00, took: 3 min}";

    private static readonly HandJob Plate = new()
    {
        Systems = "one: [{product: black, coats: 2}]",
        Surfaces = ["{name: Plate, material: steel, finish: bare, area: 1 ft2, relief: 1, system: one, mask: [{what: stud, kind: thread, edge: 1 ft}]}"],
    };

    // On since Friday 08:57. With an hour of hands left on Friday, nothing can be sprayed and bared by Saturday 08:57.
    [Fact]
    public void It_comes_off_in_time_and_goes_on_again_where_the_coat_cannot_follow()
    {
        var plan = Planned("2027-05-14 17:00", Masked);

        plan.Reasons.ShouldBeEmpty();
        var (off, on, coat) = (First(plan, "unmask"), First(plan, "remask"), First(plan, "coat"));
        off.End.ShouldBeLessThanOrEqualTo(new LocalDateTime(2027, 5, 15, 8, 57));
        on.Start.ShouldBeGreaterThanOrEqualTo(off.End);
        coat.Start.ShouldBeGreaterThanOrEqualTo(on.End);
        plan.Steps.Where(step => step.Kind is "final-wipe" or "tack").ShouldAllBe(wipe => wipe.Start >= on.End);
        plan.Steps.Count(step => step.Kind == "unmask").ShouldBe(2);
    }

    // At 09:00 the rest of the day is long enough.
    [Fact]
    public void It_stays_on_where_the_coat_can_follow()
    {
        var plan = Planned("2027-05-14 09:00", Masked);

        plan.Reasons.ShouldBeEmpty();
        plan.Steps.Count(step => step.Kind == "unmask").ShouldBe(1);
        plan.Steps.ShouldNotContain(step => step.Kind == "remask");
    }

    [Theory]
    [InlineData("")]
    [InlineData(", {surface: plate, layer: 1, coat: 1, at: 2027-05-14 10:00}")]
    [InlineData(", {surface: plate, layer: 1, coat: 1, at: 2027-05-14 10:00}, {surface: plate, layer: 1, coat: 2, at: 2027-05-14 10:30}")]
    public void On_too_long_by_now_it_comes_off_and_the_job_goes_on(string coats)
    {
        var plan = Planned("2027-05-16 08:00", Masked + coats);

        plan.Reasons.ShouldBeEmpty();
        plan.InService.ShouldNotBeNull();
        var off = First(plan, "unmask");
        off.Start.ShouldBeLessThan(new LocalDateTime(2027, 5, 16, 10, 0));
        off.WaitsFor.ShouldStartWith("The tape has been on for 47 h");
        off.WaitsFor.ShouldContain("past its limit of 24 h");
        foreach (var coat in plan.Steps.Where(step => step is { Kind: "coat", Done: false }))
            plan.Steps.ShouldContain(on => on.Kind == "remask" && on.Start >= off.End && on.End <= coat.Start);
    }

    // Ticked off as it was planned: off and on again, and the coat. The limit counts from the second time, so that the rest needs no third.
    [Fact]
    public void What_was_taken_off_and_put_on_again_stays_so_when_the_coat_is_on()
    {
        var plan = Planned(
            "2027-05-15 12:00",
            Masked + ", {surface: plate, operation: unmask, at: 2027-05-15 08:10, took: 2 min}, {surface: plate, operation: remask, at: 2027-05-15 08:20, took: 3 min}, "
            + "{surface: plate, layer: 1, coat: 1, at: 2027-05-15 12:00}");

        plan.Reasons.ShouldBeEmpty();
        plan.Steps.Where(step => step.Done).Select(step => step.Kind).ShouldBe(["mask", "unmask", "remask", "coat"]);
        plan.Steps.Where(step => step.Kind is "mask" or "remask").Count(step => !step.Done).ShouldBe(0);
        plan.Steps.Last(step => step.Kind == "unmask").Start.Date.ShouldBe(new LocalDate(2027, 5, 15));
    }

    // Somebody put it on again without a word about taking it off.
    [Fact]
    public void What_is_on_again_was_off()
    {
        var plan = Planned("2027-05-15 12:00", Masked + ", {surface: plate, operation: remask, at: 2027-05-15 11:50, took: 3 min}");

        plan.Reasons.ShouldBeEmpty();
        plan.Steps.Count(step => step.Kind == "remask").ShouldBe(1);
        plan.Steps.Count(step => step.Kind == "unmask").ShouldBe(1);
    }

    private static Plan Planned(string now, string done) => (Plate with { More = $"as-of: {now}\ndone: [{done}]" }).Plan(SearchDepth.Quick);

    private static PlanStep First(Plan plan, string kind) => plan.Steps.First(step => step.Kind == kind && !step.Done);
}
