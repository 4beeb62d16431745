using CoatPlan.Scheduling;
using CoatPlan.Tests.Desk;
using CoatPlan.Tests.Outlook;
using CoatPlan.Tests.Scheduling;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Plans;

/// <summary>A search whose answer is no longer wanted ends, and leaves nothing behind that would change the next one.</summary>
public class PlansThatAreCancelled
{
    [Theory]
    [InlineData(SearchDepth.Quick)]
    [InlineData(SearchDepth.Full)]
    public void A_plan_that_is_not_wanted_is_not_made(SearchDepth depth)
    {
        var ready = StartsWorthHaving.Ready(Desks.SmallJob);

        Should.Throw<OperationCanceledException>(() => Planner.Plan(ready, depth, new CancellationToken(canceled: true)));

        PlanJson.Write(Planner.Plan(ready, depth, CancellationToken.None)).ShouldBe(PlanJson.Write(Planner.Plan(StartsWorthHaving.Ready(Desks.SmallJob), depth)));
    }

    // The preference is asked of every schedule that the search finds: of the first, and then of no other.
    [Fact]
    public void A_search_ends_soon_after_it_is_cancelled()
    {
        using var cancel = new CancellationTokenSource();
        var asked = 0;

        Should.Throw<OperationCanceledException>(() => Scheduler.Schedule(RandomNetworks.Make(12), new Effort(4000, 0), Count, null, cancel.Token));

        asked.ShouldBeInRange(1, 3);

        long Count(Schedule schedule)
        {
            asked++;
            cancel.Cancel();
            return 0;
        }
    }
}
