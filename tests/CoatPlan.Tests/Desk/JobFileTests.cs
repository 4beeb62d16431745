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
