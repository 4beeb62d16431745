using CoatPlan.Outlook;
using CoatPlan.Tests.Desk;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Outlook;

public class ChanceOfAJob
{
    private static readonly ChanceAsked Few = new() { Draws = 150, BuyDraws = 0, Depth = SearchDepth.Quick };

    [Fact]
    public void Later_deadlines_are_met_no_less_often()
    {
        var shares = new[] { "05-15 12:00", "05-15 18:00", "05-16 12:00", "05-25 12:00" }.Select(by => Of(By(by), Few).Meets!.Value).ToArray();

        shares.ShouldBe(shares.Order());
        shares[^1].ShouldBeGreaterThan(shares[0]);
    }

    [Fact]
    public void Without_a_deadline_nothing_is_met_or_missed()
    {
        var chance = Of(Desks.SmallJob, Few);

        chance.Meets.ShouldBeNull();
        chance.Finish90.ShouldNotBeNull().ShouldBeGreaterThanOrEqualTo(chance.Finish50!.Value);
    }

    [Fact]
    public void Nothing_left_to_luck_is_the_plan()
    {
        var chance = Of(By("05-16 12:00"), Few with { Spreads = ChanceSpreads.None });

        chance.Finish50.ShouldBe(chance.Planned);
        chance.Finish90.ShouldBe(chance.Planned);
        chance.Costly.ShouldBeEmpty();
    }

    [Fact]
    public void Cans_are_those_of_the_plan()
    {
        var plan = Planner.Plan(StartsWorthHaving.Ready(Desks.SmallJob), SearchDepth.Quick);

        Of(Desks.SmallJob, Few).Cans.Select(cans => (cans.Product, cans.Cans, cans.Share))
            .ShouldBe(plan.Supplies.SelectMany(supply => supply.Covered.Select(covered => (supply.Product, covered.Cans, covered.Share))));
    }

    [Fact]
    public void What_could_be_bought_is_tried_with_the_same_draws()
    {
        var buys = Of(By("05-16 12:00"), Few with { BuyDraws = 40 }).Buys;

        buys.Select(buy => buy.What).ShouldBe(["one more hour of work each day", "one more helper", "a sealed heater that holds 65 °F"]);
        buys.ShouldAllBe(buy => buy.Meets >= 0 && buy.Meets <= 1);
    }

    /// <summary>Fewer draws are tried with each thing than without: a share of them that differs by chance is no help.</summary>
    [Fact]
    public void What_is_bought_is_held_against_the_same_draws_without_it()
    {
        var few = Of(By("05-16 12:00"), Few with { Draws = 40, BuyDraws = 40 });
        var many = Of(By("05-16 12:00"), Few with { Draws = 200, BuyDraws = 40 });

        many.Unbought.ShouldBe(few.Unbought);
        (few.Unbought!.Meets, few.Unbought.Finish50).ShouldBe((few.Meets, few.Finish50));
        many.Helping.ShouldBe(few.Helping);
    }

    [Fact]
    public void What_changes_nothing_is_no_help()
    {
        var noon = new LocalDateTime(2027, 5, 16, 12, 0);
        var chance = new Chance
        {
            Draws = 100,
            Planned = noon,
            Meets = 0.4,
            Finish50 = noon.PlusHours(2),
            Unbought = new ChanceBuy("nothing more", 0.5, noon),
            Buys =
            [
                new ChanceBuy("the same", 0.5, noon), new ChanceBuy("more in time", 0.6, noon), new ChanceBuy("sooner", 0.5, noon.PlusHours(-1)),
                new ChanceBuy("worse", 0.4, noon.PlusHours(1)), new ChanceBuy("never", 0.5, null),
            ],
        };

        chance.Helping.Select(buy => buy.What).ShouldBe(["more in time", "sooner"]);
        chance.Idle.Select(buy => buy.What).ShouldBe(["the same", "worse", "never"]);
        (chance with { Unbought = new ChanceBuy("nothing more", null, noon), Buys = [new ChanceBuy("the same", null, noon), new ChanceBuy("sooner", null, noon.PlusHours(-1))] })
            .Helping.Select(buy => buy.What).ShouldBe(["sooner"]);
    }

    [Fact]
    public void A_job_that_cannot_be_placed_has_no_chance() =>
        Chances.Of(StartsWorthHaving.Ready(Desks.SmallJob.Replace("air: 70 °F,   humidity: 40 %", "air: 30 °F, humidity: 40 %", StringComparison.Ordinal)), Few).ShouldBeNull();

    [Theory]
    [InlineData(0)]
    [InlineData(1_000_001)]
    public void A_number_of_draws_out_of_range_is_the_callers_mistake(int draws) =>
        Should.Throw<ArgumentOutOfRangeException>(() => Chances.Of(StartsWorthHaving.Ready(Desks.SmallJob), Few with { Draws = draws }));

    [Fact]
    public void It_stops_when_it_is_told_to_while_it_draws()
    {
        using var cancel = new CancellationTokenSource();
        var progress = new StopAtOnce(cancel);

        Should.Throw<OperationCanceledException>(() => Chances.Of(StartsWorthHaving.Ready(Desks.SmallJob), Few with { Draws = 20_000 }, progress, cancel.Token));
        progress.Last.ShouldBeLessThan(1);
    }

    private static Chance Of(string text, ChanceAsked asked) => Chances.Of(StartsWorthHaving.Ready(text), asked).ShouldNotBeNull();

    private static string By(string monthAndTime) =>
        Desks.SmallJob.Replace("start: 2027-05-14 16:00", $"start: 2027-05-14 16:00\nfinish-by: 2027-{monthAndTime}", StringComparison.Ordinal);

    private sealed class StopAtOnce(CancellationTokenSource cancel) : IProgress<double>
    {
        public double Last { get; private set; }

        public void Report(double value)
        {
            Last = Math.Max(Last, value);
            cancel.Cancel();
        }
    }
}
