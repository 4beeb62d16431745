using CoatPlan.App.Desk;
using CoatPlan.Tests.Commands;

namespace CoatPlan.Tests.Desk;

public sealed class LeavingTests : IDisposable
{
    private readonly TempFolder folder = new();

    private readonly string path;

    public LeavingTests() => path = folder.File("bay.job.yaml", Desks.SmallJob);

    [Fact]
    public void Leaving_without_a_change_asks_nothing()
    {
        var desk = Open();

        desk.Do(Word.Quit);

        desk.Left.ShouldBeTrue();
    }

    [Fact]
    public void Leaving_with_unsaved_work_asks_first()
    {
        var desk = Changed();

        desk.Do(Word.Quit);

        desk.Left.ShouldBeFalse();
        desk.Asking.ShouldNotBeNull();
        desk.Do(Word.Back);
        desk.Left.ShouldBeFalse();
        desk.Unsaved.ShouldBeTrue();
    }

    [Fact]
    public void Esc_at_the_root_never_leaves()
    {
        var desk = Changed();

        for (var press = 0; press < 5; press++)
            desk.Do(Word.Back);

        desk.Left.ShouldBeFalse();
    }

    [Fact]
    public void Save_and_leave_writes_the_file()
    {
        var desk = Changed();
        desk.Do(Word.Quit);

        desk.Answer('s');

        desk.Left.ShouldBeTrue();
        File.ReadAllText(path).ShouldContain("10 ft2");
    }

    [Fact]
    public void Discard_and_leave_writes_nothing_and_leaves_no_copy_behind()
    {
        var desk = Changed();
        desk.KeepSafe();
        desk.Do(Word.Quit);

        desk.Answer('d');

        desk.Left.ShouldBeTrue();
        File.ReadAllText(path).ShouldBe(Desks.SmallJob);
        Directory.GetFileSystemEntries(folder.Path).ShouldBe([path]);
    }

    [Fact]
    public void A_file_that_another_program_changed_is_not_overwritten_without_asking()
    {
        var desk = Changed();
        File.WriteAllText(path, Desks.SmallJob + "# theirs\n");

        desk.Do(Word.Save);

        desk.Asking.ShouldNotBeNull();
        File.ReadAllText(path).ShouldEndWith("# theirs\n");
        desk.Answer('o');
        File.ReadAllText(path).ShouldContain("10 ft2");
        desk.Unsaved.ShouldBeFalse();
    }

    [Fact]
    public void Work_that_was_cut_off_is_offered_the_next_time()
    {
        var killed = Changed();
        killed.KeepSafe();

        var desk = Open();
        desk.Asking.ShouldNotBeNull();
        desk.Answer('t');

        desk.Text.ShouldBe(killed.Text);
        desk.Unsaved.ShouldBeTrue();
        desk.Do(Word.Save);
        Directory.GetFileSystemEntries(folder.Path).ShouldBe([path]);
    }

    [Fact]
    public void A_job_without_a_file_is_saved_under_a_name()
    {
        var desk = Desks.Small();
        desk.Do(Word.Save);
        var edit = desk.Typing.ShouldNotBeNull();
        edit.InCell.ShouldBeFalse();

        desk.Take(path).ShouldBeFalse();
        desk.Take(folder.File("other.job.yaml")).ShouldBeTrue();

        File.ReadAllText(folder.File("other.job.yaml")).ShouldBe(Desks.SmallJob);
        desk.Unsaved.ShouldBeFalse();
    }

    [Fact]
    public void A_file_with_mistakes_is_shown_with_them_and_read_again()
    {
        File.WriteAllText(path, Desks.SmallJob.Replace("coats: 2", "coats: two", StringComparison.Ordinal));
        var desk = Open();
        desk.Job.ShouldBeNull();
        desk.Reading.Problems.ShouldNotBeEmpty();

        File.WriteAllText(path, Desks.SmallJob);
        desk.Do(Word.Reload);

        desk.Job.ShouldNotBeNull();
        desk.Plan.ShouldNotBeNull();
    }

    public void Dispose() => folder.Dispose();

    private JobDesk Open() => Desks.Of(JobFile.Open(path));

    private JobDesk Changed()
    {
        var desk = Open();
        desk.Type(SurfaceColumn.Area, "10 ft2").ShouldBeTrue();
        return desk;
    }
}
