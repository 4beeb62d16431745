using CoatPlan.Plans;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Timetable;

/// <summary>A job small enough to be worked on paper: what a test does not say is a garage at 70 °F and 50 %, one person, every day from 08:00 to 18:00.</summary>
internal sealed record HandJob
{
    /// <summary>The Friday on which a job starts that does not say when.</summary>
    public static readonly LocalDateTime Friday = new(2027, 5, 14, 8, 0);

    public string Start { get; init; } = "2027-05-14 08:00";

    public string Place { get; init; } = "volume: 4000 ft3, exhaust: 800 cfm";

    public string Weather { get; init; } = "steady: {air: 70 °F, humidity: 50 %}";

    public string Crew { get; init; } = "people: 1";

    public string Hours { get; init; } = "Mon-Sun: 08:00-18:00";

    /// <summary>Touch 25 min, tape 90 min, handle 3 h, through 24 h; within the hour or after a day; 50 to 90 °F, 30 to 80 %.</summary>
    public string Black { get; init; } =
        "{package: {net: 12 oz}, covers: 13 ft2, drying: solvent, times: {touch: 25 min, tape: 90 min, handle: 3 h, through: 24 h}, "
        + "recoat: [10 min-1 h, after 24 h], limits: {air: 50-90 °F, surface: 50-90 °F, humidity: 30-80 %}}";

    public ImmutableArray<string> Products { get; init; } = [];

    public string Systems { get; init; } = "one: [{product: black, coats: 1}]";

    public ImmutableArray<string> Surfaces { get; init; } = ["{name: Plate, material: steel, finish: bare, area: 1 ft2, relief: 1, system: one}"];

    public string More { get; init; } = "notes: by hand";

    /// <summary>The forecast file that <c>hours: forecast.csv</c> names.</summary>
    public string? Forecast { get; init; }

    public string Text => $$"""
        coatplan: 1
        job: By hand
        start: {{Start}}
        {{More}}
        place: { {{Place}}, weather: { {{Weather}} } }
        crew: { {{Crew}}, hours: { {{Hours}} } }
        products:
          black: {{Black}}
        {{string.Join('\n', Products.Select(product => "  " + product))}}
        systems: { {{Systems}} }
        surfaces:
        {{string.Join('\n', Surfaces.Select(surface => "  - " + surface))}}
        """;

    public Plan Plan(SearchDepth depth = SearchDepth.Full)
    {
        var intake = JobIntake.Read(Text, "hand.job.yaml", Trade.Standard, _ => Forecast is { } rows ? FileText.Of(rows) : FileText.Unreadable("no forecast is named"));
        intake.Problems.ShouldBeEmpty(Text);
        return Planner.Plan(intake.Ready!, depth);
    }

    /// <summary>The wait of a step for a stage of another.</summary>
    public static PlanWait Wait(Plan plan, string step, string of) => plan.Steps.Single(one => one.Id == step).After.Single(wait => wait.Step == of);
}
