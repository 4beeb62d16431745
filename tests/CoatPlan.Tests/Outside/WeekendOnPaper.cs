using CoatPlan.Plans;

namespace CoatPlan.Tests.Outside;

/// <summary>
/// A weekend worked on paper, to the minute: three bare steel parts, one product, steady 70 °F and 50 %, one person, Saturday 08:00 to 18:00.
/// </summary>
/// <remarks>
/// Areas: 4 + 2 + 6 = 12 ft² = 1.1148 m², three parts. Times are minutes per m² and per part of operations.yaml, times 1.15 for rest, rounded up to
/// the minute; work on the vehicle takes 1.4 times as long.
/// <code>
/// photograph     10 × 1.15                         = 11.5   → 12   08:00-08:12
/// disconnect      5 × 1.15                         =  5.75  →  6   08:12-08:18
/// strip down     12 × 3 × 1.4 × 1.15               = 57.96  → 58   08:18-09:16
/// solvent clean (4.3 × 1.1148 + 3 × 3) × 1.15      = 15.86  → 16   09:16-09:32, flashes off for 10 min
/// abrade        (22 × 1.1148 + 3 × 3) × 1.15       = 38.56  → 39   09:42-10:21
/// blow off       each part under the least of 3 min: 3 × 3  =  9   10:21-10:30
/// final wipe     as the solvent clean                       → 16   10:30-10:46, flashes off for 10 min
/// tack           each part under the least of 3 min         =  9   10:56-11:05
/// coat          (8.6 × 1.1148 + 3 × 3) × 1.15      = 21.38
///                and one can to shake, 3 × 1.15    =  3.45  → 25   11:05-11:30
/// coat 2         10 min after the end of coat 1                    11:40-12:05
/// coat 3         10 min after the end of coat 2                    12:15-12:40
/// refit          3 h to handle; 12 × 3 × 1.4 × 1.15         → 58   15:40-16:38
/// recheck        20 × 1.15                         = 23            16:38-17:01
/// put away       15 × 1.15                         = 17.25  → 18   17:01-17:19
/// cans           12 ft² × 3 coats ÷ 13 ft² × 1.10  =  3.05  →  4
/// </code>
/// At 70 °F the label's times are the plan's. The first coat follows its wipe within the hour (common practice): by 10:46 + 60 min = 11:46 at the latest.
/// The second starts within an hour of the first one's start: 12:05; the third likewise: 12:40. The film is in service when it is dry through, 24 h after 12:40.
/// </remarks>
public class WeekendOnPaper
{
    private const string Job = """
        coatplan: 1
        job: Paper weekend
        start: 2027-06-05 08:00
        place:
          room: {length: 20 ft, width: 20 ft, height: 10 ft}
          exhaust: 800 cfm
          weather: {steady: {air: 70 °F, humidity: 50 %}}
        crew: {people: 1, hours: {Sat-Sun: 08:00-18:00}}
        products:
          black:
            name: Black
            package: {net: 12 oz}
            covers: 13 ft2
            drying: solvent
            times: {touch: 25 min, tape: 90 min, handle: 3 h, through: 24 h}
            recoat: [10 min-1 h, after 24 h]
            limits: {air: 50-90 °F, surface: 50-90 °F, humidity: 85 %}
        systems: {three: [{product: black, coats: 3}]}
        surfaces:
          - {name: Plate, material: steel, finish: bare, area: 4 ft2, relief: 1, system: three}
          - {name: Lid, material: steel, finish: bare, area: 2 ft2, relief: 1, system: three}
          - {name: Cover, material: steel, finish: bare, area: 6 ft2, relief: 1, system: three}
        """;

    private static readonly Lazy<Plan> ThePlan = new(() =>
        Planner.Plan(JobIntake.Read(Job, "paper.job.yaml", Trade.Standard, _ => FileText.Unreadable("no forecast is named")).Ready!));

    [Theory]
    [InlineData("photograph", 8, 0, 8, 12)]
    [InlineData("disconnect", 8, 12, 8, 18)]
    [InlineData("strip-down/three", 8, 18, 9, 16)]
    [InlineData("solvent-clean/three", 9, 16, 9, 32)]
    [InlineData("scuff/three", 9, 42, 10, 21)]
    [InlineData("blow-off/three", 10, 21, 10, 30)]
    [InlineData("final-wipe/three", 10, 30, 10, 46)]
    [InlineData("tack/three", 10, 56, 11, 5)]
    [InlineData("coat/three/1.1", 11, 5, 11, 30)]
    [InlineData("coat/three/1.2", 11, 40, 12, 5)]
    [InlineData("coat/three/1.3", 12, 15, 12, 40)]
    [InlineData("refit/three", 15, 40, 16, 38)]
    [InlineData("recheck", 16, 38, 17, 1)]
    [InlineData("put-away", 17, 1, 17, 19)]
    public void Each_step_stands_where_paper_puts_it(string id, int fromHour, int fromMinute, int toHour, int toMinute)
    {
        var step = Step(id);

        step.Start.ShouldBe(Saturday(fromHour, fromMinute));
        step.End.ShouldBe(Saturday(toHour, toMinute));
    }

    [Fact]
    public void Nothing_is_done_that_paper_does_not_have() => ThePlan.Value.Steps.Length.ShouldBe(14);

    [Fact]
    public void The_finish_is_no_earlier_than_a_plan_that_parts_the_surfaces_could_be()
    {
        ThePlan.Value.Finish.ShouldBe(Saturday(17, 19));
        ThePlan.Value.LowerBound!.Value.ShouldBeInRange(Saturday(14, 0), Saturday(17, 19));
        ThePlan.Value.InService.ShouldBe(Saturday(12, 40).PlusDays(1));
    }

    [Theory]
    [InlineData("coat/three/1.1", 11, 46)]
    [InlineData("coat/three/1.2", 12, 5)]
    [InlineData("coat/three/1.3", 12, 40)]
    public void A_coat_may_slip_until_its_window_closes(string id, int hour, int minute) =>
        Step(id).LastSafeStart.ShouldBe(Saturday(hour, minute));

    [Fact]
    public void Three_coats_on_twelve_square_feet_take_four_cans()
    {
        var supply = ThePlan.Value.Supplies.ShouldHaveSingleItem();

        supply.AreaCoatsM2.ShouldBe(36 * 0.09290304, 1e-9);
        supply.Cans.ShouldBe(4);
        supply.Basis.ShouldBe(PlanBasis.Covers);
    }

    private static PlanStep Step(string id) => ThePlan.Value.Steps.Single(step => step.Id == id);

    private static LocalDateTime Saturday(int hour, int minute) => new(2027, 6, 5, hour, minute);
}
