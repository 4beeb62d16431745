using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Problems;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Properties;

/// <summary>
/// At a rest point the job stops for a week: planned again from there, a film that lies half built up asks for no step before its next coat that it did not ask
/// for in the plan that never stopped.
/// </summary>
public class RestsWithoutRework
{
    private static readonly string[] s_windows = ["after 24 h", "after 30 min", "[10 min-1 h, after 24 h]", "[10 min-1 h, after 7 d], missed: scuff", "10 min-12 d"];

    private static readonly string[] s_hours = ["Mon-Sun: 08:00-18:00", "Mon-Fri: [09:00-09:50, 10:00-10:50]"];

    private static readonly string[] s_surfaces = ["finish: factory paint, condition: [chips]", "finish: bare, condition: [light rust], mask: [{what: thread, kind: thread, edge: 1 ft}]"];

    [Fact]
    public void A_week_later_the_same_work_is_left_before_the_next_coat()
    {
        var rested = 0;
        foreach (var (window, hours, surface) in s_windows.SelectMany(window => s_hours.SelectMany(hours => s_surfaces.Select(surface => (window, hours, surface)))))
        {
            var ready = Ready(window, hours, surface);
            var plan = Planner.Plan(ready, SearchDepth.Quick);
            foreach (var point in plan.RestPoints)
            {
                var later = Stopped(ready, plan, point);
                foreach (var (station, id) in HalfBuiltUp(later))
                {
                    BeforeNextCoat(later, station, id, point.At).ShouldBe(
                        BeforeNextCoat(plan, station, id, point.At), ignoreOrder: true, $"{window}, {hours}, {surface}: after {point.After} at {point.At}");
                    rested++;
                }
            }
        }

        rested.ShouldBeGreaterThan(5);
    }

    private static IEnumerable<(int? Station, string Surface)> HalfBuiltUp(Plan plan) => plan.Steps
        .Where(step => step.Kind == "coat")
        .SelectMany(step => step.Surfaces, (step, surface) => (step.Station, surface, step.Done))
        .GroupBy(coat => (coat.Station, coat.surface))
        .Where(coats => coats.Any(coat => coat.Done) && coats.Any(coat => !coat.Done))
        .Select(coats => coats.Key);

    private static string[] BeforeNextCoat(Plan plan, int? station, string surface, LocalDateTime from)
    {
        var left = plan.Steps.Where(step => step.Start >= from && step.Station == station && step.Surfaces.Contains(surface)).ToArray();
        return [.. left.TakeWhile(step => step.Kind != "coat").Select(step => step.Kind)];
    }

    private static Plan Stopped(ReadyJob ready, Plan plan, PlanRestPoint point) => Planner.Plan(
        Resumed(ready, plan, point),
        SearchDepth.Quick);

    private static ReadyJob Resumed(ReadyJob ready, Plan plan, PlanRestPoint point) => new(
        ready.Job with
        {
            Done = [.. plan.Steps.Where(step => step.End <= point.At).Select(Entry)],
            AsOf = point.At.PlusDays(7),
            FinishBy = null,
        },
        ready.Labels,
        ready.Forecast,
        ready.Trade);

    private static DoneEntry Entry(PlanStep step) => new()
    {
        Surfaces = step.Surfaces,
        Operation = step.Kind == "coat" ? null : step.Kind,
        Layer = step.Layer,
        Coat = step.Coat,
        At = step.End,
        Took = Duration.FromMinutes(step.HandsMin),
        Mark = new Mark(1, 1),
    };

    private static ReadyJob Ready(string window, string hours, string surface)
    {
        var intake = JobIntake.Read(
            $$"""
            coatplan: 1
            job: A rest
            start: 2027-05-14 08:00
            place: {volume: 4000 ft3, exhaust: 800 cfm, weather: {daily: {low: 58 °F, high: 76 °F, dew-point: 48 °F} } }
            crew: {people: 1, hours: { {{hours}} } }
            products:
              black: {preset: underhood-black-aerosol, recoat: {{window}}}
              etch: {preset: etch-primer-aerosol}
            systems: {s: [{product: etch, coats: 1}, {product: black, coats: 3}]}
            surfaces:
              - {name: Bracket, material: steel, {{surface}}, area: 1 ft2, system: s}
            """,
            "rest.job.yaml",
            Trade.Standard,
            _ => FileText.Unreadable("no forecast is named"));
        intake.Problems.ShouldBeEmpty();
        return intake.Ready!;
    }
}
