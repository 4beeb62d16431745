using CoatPlan.App.Desk;

namespace CoatPlan.Tests.Desk;

public sealed class JobFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("coatplan-test").FullName;

    private string JobPath => Path.Combine(folder, "bay.job.yaml");

    [Fact]
    public void Saving_leaves_nothing_else_beside_the_file()
    {
        File.WriteAllText(JobPath, "old");
        var file = JobFile.Open(JobPath);
        file.KeepSafe("newer");

        file.Save("new");

        File.ReadAllText(JobPath).ShouldBe("new");
        Directory.GetFileSystemEntries(folder).ShouldBe([JobPath]);
    }

    [Fact]
    public void A_change_by_another_program_is_seen()
    {
        File.WriteAllText(JobPath, "old");
        var file = JobFile.Open(JobPath);
        file.ChangedOnDisk().ShouldBeFalse();

        File.WriteAllText(JobPath, "someone else's");

        file.ChangedOnDisk().ShouldBeTrue();
    }

    [Fact]
    public void Unsaved_work_is_found_again()
    {
        File.WriteAllText(JobPath, "old");
        JobFile.Open(JobPath).KeepSafe("in the middle of it");

        JobFile.Open(JobPath).LeftBehind().ShouldBe("in the middle of it");
    }

    [Fact]
    public void A_copy_of_what_the_file_holds_is_no_unsaved_work()
    {
        File.WriteAllText(JobPath, "old");
        JobFile.Open(JobPath).KeepSafe("old");

        JobFile.Open(JobPath).LeftBehind().ShouldBeNull();
    }

    [Fact]
    public void Unsaved_work_is_kept_though_the_folder_is_gone()
    {
        File.WriteAllText(JobPath, "old");
        var file = JobFile.Open(JobPath);
        Directory.Delete(folder, recursive: true);

        file.KeepSafe("in the middle of it");

        file.LeftBehind().ShouldBe("in the middle of it");
    }

    [Fact]
    public void New_jobs_that_are_open_at_once_keep_a_copy_each()
    {
        var copies = Path.Combine(folder, "copies");
        using (var one = JobFile.Unnamed("one", copies))
        using (var two = JobFile.Unnamed("two", copies))
        {
            one.KeepSafe("more of one");
            two.KeepSafe("more of two");
            JobFile.Unnamed("three", copies).LeftBehind().ShouldBeNull();
        }

        using var first = JobFile.Unnamed("a", copies);
        using var second = JobFile.Unnamed("a", copies);
        first.LeftBehind().ShouldBe("more of one");
        second.LeftBehind().ShouldBe("more of two");
    }

    [Fact]
    public void A_new_job_that_got_a_file_lets_go_of_its_copy()
    {
        var copies = Path.Combine(folder, "copies");
        using var saved = JobFile.Unnamed("one", copies);
        saved.KeepSafe("more of one");

        saved.TrySaveAs(JobPath, "more of one").ShouldBeNull();
        using var next = JobFile.Unnamed("two", copies);
        next.KeepSafe("more of two");
        saved.KeepSafe("still more of one");

        next.LeftBehind().ShouldBe("more of two");
        JobFile.Open(JobPath).LeftBehind().ShouldBe("still more of one");
    }

    [Fact]
    public void A_new_job_opens_where_no_copy_can_be_kept()
    {
        File.WriteAllText(JobPath, "old");

        using var file = JobFile.Unnamed("new", Path.Combine(JobPath, "below"));
        file.KeepSafe("newer");

        file.LeftBehind().ShouldBeNull();
    }

    [Fact]
    public void A_file_that_cannot_be_replaced_keeps_its_content()
    {
        File.WriteAllText(JobPath, "old");
        var file = JobFile.Open(JobPath);
        Directory.Delete(folder, recursive: true);

        Should.Throw<IOException>(() => file.Save("new"));
    }

    [Fact]
    public void A_link_is_followed_when_saving()
    {
        var real = Path.Combine(folder, "real.job.yaml");
        File.WriteAllText(real, "old");
        File.CreateSymbolicLink(JobPath, real);

        JobFile.Open(JobPath).Save("new");

        File.ReadAllText(real).ShouldBe("new");
        new FileInfo(JobPath).LinkTarget.ShouldBe(real);
    }

    public void Dispose()
    {
        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
    }
}
