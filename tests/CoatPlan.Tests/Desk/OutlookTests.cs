using CoatPlan.App;
using CoatPlan.App.Desk;

namespace CoatPlan.Tests.Desk;

public sealed class OutlookTests
{
    private static readonly StartTime Saturday = new(new LocalDateTime(2027, 5, 15, 8, 0), new LocalDateTime(2027, 5, 16, 12, 0), true, 4, 2);

    [Fact]
    public void The_starts_are_offered_and_the_one_that_is_picked_becomes_the_jobs()
    {
        var desk = With(Desks.Quick with { When = (_, _, _) => [Saturday] });

        desk.Do(Word.When);
        desk.Picking.ShouldNotBeNull().Rows.ShouldHaveSingleItem().Means.ShouldContain("Sun 16 May 12:00");
        desk.Do(Word.Enter);

        desk.Job!.Start.ShouldBe(Saturday.Start);
        desk.Text.ShouldBe(Desks.SmallJob.Replace("2027-05-14 16:00", "2027-05-15 08:00", StringComparison.Ordinal));
        desk.Do(Word.Undo);
        desk.Text.ShouldBe(Desks.SmallJob);
    }

    [Fact]
    public void No_start_is_said_in_words()
    {
        var desk = With(Desks.Quick with { When = (_, _, _) => [] });

        desk.Do(Word.When);

        desk.Page.ShouldNotBeNull().Lines.ShouldHaveSingleItem().Text.ShouldContain("From no start");
    }

    [Fact]
    public void Work_that_takes_a_while_tells_how_far_it_is_and_can_be_stopped()
    {
        var background = new Queue<Action>();
        var shares = new List<double>();
        JobDesk? desk = null;
        desk = new JobDesk(JobFile.Unnamed(Desks.SmallJob), Desks.Quick with
        {
            Chance = (_, progress, cancel) =>
            {
                progress.Report(0.25);
                shares.Add(desk!.Running!.Share);
                desk.Do(Word.Back);
                cancel.ThrowIfCancellationRequested();
                return null;
            },
        }, background.Enqueue, static work => work());

        Drain(background);
        desk.Do(Word.Chance);
        desk.Running.ShouldNotBeNull();
        Drain(background);

        shares.ShouldBe([0.25]);
        desk.Running.ShouldBeNull();
        desk.Page.ShouldBeNull();
        desk.Message.ShouldContain("stopped");
        desk.Text.ShouldBe(Desks.SmallJob);
    }

    [Fact]
    public void Keys_change_nothing_while_work_goes_on()
    {
        var background = new Queue<Action>();
        var desk = new JobDesk(JobFile.Unnamed(Desks.SmallJob), Desks.Quick, background.Enqueue, static work => work());
        Drain(background);
        desk.Do(Word.Chance);

        desk.Do(Word.Copy);
        desk.Do(Word.Delete);

        desk.Text.ShouldBe(Desks.SmallJob);
        desk.Running.ShouldNotBeNull();
    }

    [Fact]
    public void A_fault_in_such_work_is_told_and_the_work_on_the_job_goes_on()
    {
        var desk = With(Desks.Quick with { Chance = (_, _, _) => throw new InvalidOperationException("broken") });

        desk.Do(Word.Chance);

        desk.Message.ShouldContain("broken");
        desk.Running.ShouldBeNull();
    }

    [Fact]
    public void A_chance_is_a_page_that_is_closed_again()
    {
        var desk = With(Desks.Quick with { Chance = (_, _, _) => new Chance { Draws = 10_000, Planned = Saturday.Finish, Meets = 0.83, Finish50 = Saturday.Finish, Finish90 = null } });

        desk.Do(Word.Chance);
        desk.Page.ShouldNotBeNull().Lines.ShouldContain(line => line.Text.Contains("not within 60 days", StringComparison.Ordinal));
        desk.Do(Word.Back);

        desk.Page.ShouldBeNull();
    }

    [Fact]
    public void The_plan_stands_beside_that_of_the_saved_file()
    {
        var desk = Desks.Small();
        desk.Type(SurfaceColumn.Area, "80 ft2").ShouldBeTrue();

        desk.Do(Word.Compare);
        desk.Do(Word.Enter);

        var page = desk.Page.ShouldNotBeNull();
        page.Lines.ShouldContain(line => line.Text.Contains("the file as saved", StringComparison.Ordinal));
        page.Lines.ShouldContain(line => line.Text.Contains("more.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_that_is_not_there_is_no_plan_to_compare_with()
    {
        var desk = Desks.Small();
        desk.Do(Word.Compare);
        desk.Do(Word.Last);
        desk.Do(Word.Enter);

        desk.Take("nowhere.job.yaml").ShouldBeFalse();

        desk.Typing.ShouldNotBeNull().Complaint.ShouldNotBeNull().ShouldContain("nowhere.job.yaml");
    }

    [Fact]
    public void Whatever_is_chosen_is_explained()
    {
        var desk = Desks.Planned();
        foreach (var place in Enum.GetValues<DeskPlace>())
        {
            desk.Do(Word.GoSurfaces + (int)place);
            foreach (var column in place == DeskPlace.Surfaces ? Enum.GetValues<SurfaceColumn>() : [SurfaceColumn.Piece])
            {
                desk.Choose(0, column);
                desk.Do(Word.Explain);

                var page = desk.Page.ShouldNotBeNull($"{place} {column}: {desk.Message}");
                page.Lines.ShouldContain(line => line.Lead.Contains("source", StringComparison.Ordinal));
                desk.Do(Word.Back);
            }
        }
    }

    [Fact]
    public void Every_row_of_the_supplies_and_every_step_is_explained()
    {
        var desk = Desks.Planned();
        desk.Do(Word.GoSupplies);
        for (var row = 0; row < desk.Plan!.Supplies.Length + desk.Plan.Consumables.Length; row++)
        {
            desk.Do(Word.Explain);
            desk.Page.ShouldNotBeNull(desk.Message);
            desk.Do(Word.Back);
            desk.Do(Word.Down);
        }

        desk.Do(Word.GoSequence);
        for (var row = 0; row < desk.Plan.Steps.Length; row++)
        {
            desk.Do(Word.Explain);
            desk.Page.ShouldNotBeNull(desk.Message);
            desk.Do(Word.Back);
            desk.Do(Word.Down);
        }
    }

    [Fact]
    public void Any_figure_can_be_asked_for()
    {
        var desk = Desks.Planned();
        desk.Do(Word.Explain);
        desk.Do(Word.Explain);
        var picker = desk.Picking.ShouldNotBeNull();
        picker.Type("lowerBound");

        desk.Do(Word.Enter);

        desk.Page.ShouldNotBeNull().Lines[0].Text.ShouldNotBeEmpty();
        desk.Picking.ShouldBeNull();
    }

    private static JobDesk With(Workshop workshop) => new(JobFile.Unnamed(Desks.SmallJob), workshop, static work => work(), static work => work());

    private static void Drain(Queue<Action> background)
    {
        while (background.TryDequeue(out var work))
            work();
    }
}
