using CoatPlan.App.Desk;
using CoatPlan.App.Screens;

namespace CoatPlan.Tests.Desk;

public sealed class ReplanShownTests
{
    private readonly Queue<Action> background = new();

    private readonly JobDesk desk;

    public ReplanShownTests()
    {
        desk = new JobDesk(JobFile.Unnamed(Desks.SmallJob), Desks.Quick, background.Enqueue, static work => work());
        Drain();
    }

    [Fact]
    public void A_change_shows_at_once_and_its_plan_when_it_is_made()
    {
        var before = desk.Plan;

        desk.Type(SurfaceColumn.Area, "80 ft2").ShouldBeTrue();

        desk.Job!.Surfaces[0].Area!.Value.SquareFeet.ShouldBe(80, 1e-9);
        desk.Plan.ShouldBe(before);
        desk.Planning.ShouldBeTrue();
        TotalsScreen.Text(desk).ShouldStartWith("planning: finish");

        // The quick plan first, then the best.
        background.Dequeue()();
        desk.Plan.ShouldNotBe(before);
        desk.Improving.ShouldBeTrue();
        TotalsScreen.Text(desk).ShouldStartWith("improving: finish");
        Drain();
        desk.Improving.ShouldBeFalse();
    }

    [Fact]
    public void Keys_go_on_while_a_plan_is_made_and_the_newest_change_wins()
    {
        desk.Type(SurfaceColumn.Area, "80 ft2").ShouldBeTrue();
        desk.Type(SurfaceColumn.Count, "5").ShouldBeTrue();
        desk.Do(Word.GoSequence);
        desk.Do(Word.Down);

        Drain();

        desk.Plan!.Surfaces[0].Count.ShouldBe(5);
        desk.Place.ShouldBe(DeskPlace.Sequence);
    }

    [Fact]
    public void What_a_change_comes_to_is_sketched_from_the_plan_that_was_shown_before_it()
    {
        var from = new List<Plan?>();
        var sketched = new JobDesk(
            JobFile.Unnamed(Desks.SmallJob),
            Desks.Quick with { Sketch = (ready, before) => { from.Add(before); return Desks.Quick.Sketch(ready, before); } },
            static work => work(),
            static work => work());
        var shown = sketched.Plan;

        sketched.Type(SurfaceColumn.Area, "80 ft2").ShouldBeTrue();

        from.ShouldBe([null, shown]);
    }

    [Fact]
    public void The_best_plan_is_looked_for_once_the_sketch_is_drawn_and_not_where_something_newer_is_wanted()
    {
        var (handedOver, searched) = (new Queue<Action>(), new List<int>());
        var watched = new JobDesk(
            JobFile.Unnamed(Desks.SmallJob),
            Desks.Quick with { Plan = (ready, cancel) => { searched.Add(ready.Job.Surfaces[0].Count); return Desks.Quick.Plan(ready, cancel); } },
            background.Enqueue,
            handedOver.Enqueue);
        background.Dequeue()();
        handedOver.Dequeue()();

        watched.Plan.ShouldNotBeNull();
        watched.Improving.ShouldBeTrue();
        watched.Type(SurfaceColumn.Count, "5").ShouldBeTrue();
        while (handedOver.TryDequeue(out var turn) || background.TryDequeue(out turn))
            turn();

        searched.ShouldBe([5]);
        watched.Improving.ShouldBeFalse();
    }

    private void Drain()
    {
        while (background.TryDequeue(out var work))
            work();
    }
}
