using CoatPlan.App.Desk;
using CoatPlan.Tests.Plans;

namespace CoatPlan.Tests.Desk;

public sealed class ReplannerTests
{
    private readonly Queue<Action> background = new();

    private readonly List<string> planned = [];

    private readonly List<string> shown = [];

    [Fact]
    public void Only_the_newest_of_the_plans_that_wait_is_made()
    {
        var replanner = Replanner();
        foreach (var name in new[] { "a", "b", "c", "d" })
            Want(replanner, name);

        while (background.TryDequeue(out var work))
            work();

        planned.ShouldBe(["a", "d"]);
    }

    [Fact]
    public void An_older_plan_is_never_shown_after_a_newer_one_was_asked_for()
    {
        var replanner = Replanner();
        Want(replanner, "old");
        Want(replanner, "new");

        while (background.TryDequeue(out var work))
            work();

        shown.ShouldBe(["new"]);
        replanner.Busy.ShouldBeFalse();
    }

    [Fact]
    public void An_error_of_the_planner_arrives_as_an_answer()
    {
        Exception? seen = null;
        var replanner = new Replanner(static work => work(), static work => work());

        replanner.Want(_ => throw new InvalidOperationException("broken"), (_, trouble) => seen = trouble);

        seen.ShouldNotBeNull().Message.ShouldBe("broken");
        replanner.Busy.ShouldBeFalse();
    }

    [Fact]
    public void After_cancelling_nothing_arrives_and_the_next_plan_is_made()
    {
        var replanner = Replanner();
        Want(replanner, "a");
        replanner.Cancel();
        background.Dequeue()();
        shown.ShouldBeEmpty();

        Want(replanner, "b");
        background.Dequeue()();

        shown.ShouldBe(["b"]);
    }

    [Fact]
    public void A_plan_that_is_forgotten_while_it_is_made_is_told_to_stop()
    {
        var replanner = Replanner();
        var (stopped, trouble) = (false, false);
        replanner.Want(
            cancel =>
            {
                replanner.Cancel();
                stopped = cancel.IsCancellationRequested;
                cancel.ThrowIfCancellationRequested();
                return CoatPlan.App.PlannedJob.Alone(SamplePlan.Weekend());
            },
            (_, why) => trouble = why is not null);

        background.Dequeue()();

        stopped.ShouldBeTrue();
        trouble.ShouldBeFalse();
        replanner.Busy.ShouldBeFalse();
    }

    private Replanner Replanner() => new(background.Enqueue, static work => work());

    private void Want(Replanner replanner, string name) => replanner.Want(
        _ =>
        {
            planned.Add(name);
            return CoatPlan.App.PlannedJob.Alone(SamplePlan.Weekend());
        },
        (_, _) => shown.Add(name));
}
