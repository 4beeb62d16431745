using System.Globalization;
using System.Text.RegularExpressions;
using CoatPlan.Sheets.Calendar;
using CoatPlan.Sheets.Content;
using CoatPlan.Tests.Plans;
using NodaTime.Text;

namespace CoatPlan.Tests.Sheets;

public class CalendarTests
{
    private static readonly LocalDateTimePattern s_floating = LocalDateTimePattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss");

    public static TheoryData<string> Plans => ["roadster", "sample", "other scripts"];

    [Theory]
    [MemberData(nameof(Plans))]
    public void Each_step_is_an_event_at_its_own_time_and_a_wait_is_none(string name)
    {
        var plan = PlanOf(name);
        var events = ReadCalendar.Of(PlanCalendar.Write(plan)!).Events;

        events.Count.ShouldBe(plan.Steps.Length);
        foreach (var step in plan.Steps)
        {
            var found = events.Where(one => one.Properties["UID"].StartsWith(step.Id + ".", StringComparison.Ordinal)).ShouldHaveSingleItem().Properties;
            s_floating.Parse(found["DTSTART"]).Value.ShouldBe(step.Start);
            s_floating.Parse(found["DTEND"]).Value.ShouldBe(step.End);
            found["SUMMARY"].ShouldBe(step.Title);
            found["DESCRIPTION"].ShouldContain(WhyLine.Of(step.Why));
        }
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void An_alarm_sounds_before_each_window_closes(string name)
    {
        var plan = PlanOf(name);
        var events = ReadCalendar.Of(PlanCalendar.Write(plan)!).Events;

        events.Sum(one => one.Alarms.Count).ShouldBe(plan.Steps.Count(step => step.LastSafeStart is not null));
        foreach (var step in plan.Steps.Where(step => step.LastSafeStart is not null))
        {
            var found = events.Single(one => one.Properties["UID"].StartsWith(step.Id + ".", StringComparison.Ordinal));
            var alarm = found.Alarms.ShouldHaveSingleItem();
            alarm["ACTION"].ShouldBe("DISPLAY");
            alarm["DESCRIPTION"].ShouldContain(step.Title);
            step.Start.PlusMinutes(Minutes(alarm["TRIGGER"])).ShouldBe(step.LastSafeStart!.Value.PlusMinutes(-PlanCalendar.AlarmLeadMinutes));
        }
    }

    [Fact]
    public void The_example_weekend_has_alarms() =>
        ReadCalendar.Of(PlanCalendar.Write(SheetSamples.Roadster())!).Events.SelectMany(one => one.Alarms).ShouldNotBeEmpty();

    [Fact]
    public void A_coat_that_is_done_sounds_no_alarm()
    {
        var plan = SamplePlan.Weekend();
        plan = plan with { Steps = [.. plan.Steps.Select(step => step with { Done = true })] };

        ReadCalendar.Of(PlanCalendar.Write(plan)!).Events.SelectMany(one => one.Alarms).ShouldBeEmpty();
    }

    [Fact]
    public void A_plan_that_moved_moves_its_events_and_doubles_none()
    {
        var plan = SamplePlan.Weekend();
        var later = plan with { Start = plan.Start.PlusDays(7), Steps = [.. plan.Steps.Select(step => step with { Start = step.Start.PlusDays(7), End = step.End.PlusDays(7) })] };

        var before = Uids(plan);
        Uids(later).ShouldBe(before);
        before.Distinct().Count().ShouldBe(plan.Steps.Length);
        Uids(plan with { Job = "Another bay" }).Intersect(before).ShouldBeEmpty();
    }

    [Fact]
    public void The_stamp_is_the_jobs_start_and_no_clock_is_asked()
    {
        var plan = SamplePlan.Weekend();
        var text = PlanCalendar.Write(plan)!;

        ReadCalendar.Of(text).Events.ShouldAllBe(one => one.Properties["DTSTAMP"] == "20270514T160000Z");
        PlanCalendar.Write(SamplePlan.Weekend()).ShouldBe(text);
        Regex.Matches(text, @"\d{8}T\d{6}").Select(match => match.Value[..6]).Distinct().ShouldBe(["202705"]);
    }

    [Fact]
    public void The_head_names_version_maker_and_job()
    {
        var head = ReadCalendar.Of(PlanCalendar.Write(SamplePlan.Weekend())!).Head;

        head["VERSION"].ShouldBe("2.0");
        head["PRODID"].ShouldNotBeEmpty();
        head["X-WR-CALNAME"].ShouldBe("Roadster engine bay");
    }

    [Fact]
    public void Names_open_no_property_and_no_event_of_their_own()
    {
        var plan = SamplePlan.Weekend();
        var step = plan.Steps[0] with { Title = "a;b,c\\n\"d\"\r\nEND:VEVENT\r\nBEGIN:VEVENT\u001b:x", Why = "x\nUID:y" };
        var events = ReadCalendar.Of(PlanCalendar.Write(plan with { Job = "j\r\nBEGIN:VEVENT", Steps = [step] })!).Events;

        events.ShouldHaveSingleItem().Properties["SUMMARY"].ShouldBe("a;b,c\\n\"d\"  END:VEVENT  BEGIN:VEVENT?:x");
    }

    [Fact]
    public void Nothing_placed_makes_no_calendar() => PlanCalendar.Write(SamplePlan.Nothing()).ShouldBeNull();

    [Fact]
    public void The_calendar_is_the_same_in_every_culture()
    {
        var here = CultureInfo.CurrentCulture;
        var text = PlanCalendar.Write(SamplePlan.Weekend());
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("ar-SA");
            PlanCalendar.Write(SamplePlan.Weekend()).ShouldBe(text);
        }
        finally
        {
            CultureInfo.CurrentCulture = here;
        }
    }

    private static Plan PlanOf(string name) => name switch
    {
        "roadster" => SheetSamples.Roadster(),
        "sample" => SamplePlan.Weekend(),
        _ => SheetSamples.Many(12),
    };

    private static string[] Uids(Plan plan) => [.. ReadCalendar.Of(PlanCalendar.Write(plan)!).Events.Select(one => one.Properties["UID"]).Order(StringComparer.Ordinal)];

    // A duration after RFC 5545, section 3.3.6.
    private static long Minutes(string duration)
    {
        var match = Regex.Match(duration, @"^([+-]?)P(?:(\d+)W|(?:(\d+)D)?(?:T(?:(\d+)H)?(?:(\d+)M)?(?:(\d+)S)?)?)$");
        match.Success.ShouldBeTrue(duration);
        long Part(int group) => match.Groups[group].Success ? long.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture) : 0;
        var minutes = ((Part(2) * 7 + Part(3)) * 24 + Part(4)) * 60 + Part(5);
        return match.Groups[1].Value == "-" ? -minutes : minutes;
    }
}
