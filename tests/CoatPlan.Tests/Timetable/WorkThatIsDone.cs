using CoatPlan.Plans;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Timetable;

/// <summary>What a person says that a step took, on the step: by hand, from the job file's "took" and "at".</summary>
public class WorkThatIsDone
{
    private static readonly HandJob Two = new()
    {
        Surfaces =
        [
            "{name: Plate, material: steel, finish: bare, area: 1 ft2, relief: 1, system: one}",
            "{name: Tray, material: steel, finish: bare, area: 1 ft2, relief: 1, system: one}",
        ],
    };

    // A step that ended at 12:00 and took 7 minutes began at 11:53, whatever had been planned for it.
    [Theory]
    [InlineData("7 min", "11:53", 7)]
    [InlineData("1 h 10 min", "10:50", 70)]
    public void Hands_on_time_of_a_step_is_what_it_took(string took, string began, int minutes)
    {
        var plan = (Two with { More = $"as-of: 2027-05-14 13:00\ndone: [{{surfaces: [plate, tray], layer: 1, coat: 1, at: 2027-05-14 12:00, took: {took}}}]" }).Plan();

        var coat = plan.Steps.Single(step => step.Kind == "coat");
        coat.Done.ShouldBeTrue();
        coat.Start.TimeOfDay.ShouldBe(LocalTime.FromHourMinuteSecondTick(int.Parse(began[..2], System.Globalization.CultureInfo.InvariantCulture), int.Parse(began[3..], System.Globalization.CultureInfo.InvariantCulture), 0, 0));
        coat.HandsMin.ShouldBe(minutes);
    }

    // Wiped on Friday evening, and then it got too late to spray: on Saturday it is wiped again, and sprayed.
    [Fact]
    public void A_wipe_that_no_coat_followed_in_time_is_done_again()
    {
        var plan = (Two with
        {
            More = "as-of: 2027-05-15 09:00\ndone: [{surfaces: [plate, tray], operation: solvent-clean, at: 2027-05-14 12:00}, {surfaces: [plate, tray], operation: scuff, at: 2027-05-14 12:20}, "
                + "{surfaces: [plate, tray], operation: blow-off, at: 2027-05-14 12:30}, {surfaces: [plate, tray], operation: final-wipe, at: 2027-05-14 17:30}, {surfaces: [plate, tray], operation: tack, at: 2027-05-14 17:50}]",
        }).Plan(SearchDepth.Quick);

        plan.Reasons.ShouldBeEmpty();
        var (wipe, tack, coat) = (Again(plan, "final-wipe"), Again(plan, "tack"), plan.Steps.Single(step => step.Kind == "coat"));
        tack.Start.ShouldBeGreaterThan(wipe.End);
        coat.Start.ShouldBeInRange(tack.End, wipe.End.PlusMinutes(60));
        plan.Steps.Count(step => step.Kind is "final-wipe" or "tack" && step.Done).ShouldBe(2);
    }

    // Two entries of one step: hands were on it for 10 and for 20 minutes, not for the two hours from the first to the last.
    [Fact]
    public void Hands_on_times_of_several_entries_for_one_step_are_added()
    {
        var plan = (Two with
        {
            More = "as-of: 2027-05-14 13:00\ndone: [{surface: plate, operation: solvent-clean, at: 2027-05-14 10:00, took: 10 min}, {surface: tray, operation: solvent-clean, at: 2027-05-14 12:00, took: 20 min}]",
        }).Plan(SearchDepth.Quick);

        var clean = plan.Steps.Single(step => step.Kind == "solvent-clean");
        clean.Start.ShouldBe(new LocalDateTime(2027, 5, 14, 9, 50, 0));
        clean.End.ShouldBe(new LocalDateTime(2027, 5, 14, 12, 0, 0));
        clean.HandsMin.ShouldBe(30);
    }

    private static PlanStep Again(Plan plan, string kind) => plan.Steps.Single(step => step.Kind == kind && !step.Done);

    // One entry for two batches of one surface each: 20 minutes in all are 10 for each.
    [Fact]
    public void Hands_on_time_of_one_entry_for_several_steps_is_shared_out()
    {
        var plan = (Two with
        {
            Systems = "one: [{product: black, coats: 1}], two: [{product: black, coats: 2}]",
            Surfaces = [Two.Surfaces[0], Two.Surfaces[1].Replace("system: one", "system: two", StringComparison.Ordinal)],
            More = "as-of: 2027-05-14 13:00\ndone: [{surfaces: [plate, tray], operation: solvent-clean, at: 2027-05-14 12:00, took: 20 min}]",
        }).Plan();

        var cleans = plan.Steps.Where(step => step.Kind == "solvent-clean").ToArray();
        cleans.Length.ShouldBe(2);
        cleans.ShouldAllBe(clean => clean.Done && clean.HandsMin == 10 && clean.Start == new LocalDateTime(2027, 5, 14, 11, 50, 0));
    }
}
