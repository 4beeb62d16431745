using CoatPlan.App;
using CoatPlan.App.Desk;
using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Desk;

namespace CoatPlan.Tests.Faults;

/// <summary>A save that cannot be: the old file is whole, nothing lies beside it, and the message says what to do.</summary>
public sealed class SavesThatFail : IDisposable
{
    private readonly TempFolder folder = new();

    private readonly string job;

    public SavesThatFail() => job = folder.File("a.job.yaml", Desks.SmallJob);

    [Fact]
    public void A_full_disk_leaves_the_old_file_and_is_the_machines_trouble()
    {
        if (OperatingSystem.IsWindows() || !OtherProgram.IsThere("bash"))
            return;

        var large = folder.File("large.job.yaml", Desks.SmallJob + "# " + new string('x', 20_000) + "\n");
        var before = File.ReadAllBytes(large);
        var program = Path.Combine(AppContext.BaseDirectory, "coatplan");

        // A limit on the size of files stands for a full disk: the write itself fails, in the middle of the file. The runtime's own large mapping is kept out of it.
        var said = OtherProgram.Run(folder.Path, "bash", "-c",
            $"export DOTNET_EnableWriteXorExecute=0 DOTNET_EnableDiagnostics=0; trap '' XFSZ; ulimit -f 8; '{program}' done large.job.yaml photograph --at 16:10 2>&1; echo \"exit code $?\"");

        said.ShouldContain("exit code 1");
        said.ShouldContain("large.job.yaml: cannot be written: ");
        said.ShouldContain("untouched");
        said.ShouldNotContain("error of the program");
        File.ReadAllBytes(large).ShouldBe(before);
        Directory.GetFileSystemEntries(folder.Path).ShouldBe([job, large], ignoreOrder: true);
    }

    [Fact]
    public void Sheets_that_do_not_fit_on_the_disk_leave_no_empty_folder()
    {
        if (OperatingSystem.IsWindows() || !OtherProgram.IsThere("bash"))
            return;

        var program = Path.Combine(AppContext.BaseDirectory, "coatplan");

        var said = OtherProgram.Run(folder.Path, "bash", "-c",
            $"export DOTNET_EnableWriteXorExecute=0 DOTNET_EnableDiagnostics=0; trap '' XFSZ; ulimit -f 8; '{program}' sheets a.job.yaml --to printed 2>&1; echo \"exit code $?\"");

        said.ShouldContain("exit code 1");
        said.ShouldContain("printed: cannot be written: ");
        Directory.GetFileSystemEntries(folder.Path).ShouldBe([job]);
    }

    [Fact]
    public void An_output_that_cannot_be_written_is_said_as_such()
    {
        if (!File.Exists("/dev/full") || !OtherProgram.IsThere("bash"))
            return;

        var said = OtherProgram.Run(folder.Path, "bash", "-c", $"'{Path.Combine(AppContext.BaseDirectory, "coatplan")}' schema 2>&1 >/dev/full; echo \"exit code $?\"");

        said.ShouldContain("exit code 1");
        said.ShouldContain("the output cannot be written");
    }

    [Fact]
    public void A_file_marked_read_only_is_not_replaced()
    {
        File.SetAttributes(job, FileAttributes.ReadOnly);
        try
        {
            var run = CommandRun.Of("done", job, "photograph", "--at", "16:10");

            run.ExitCode.ShouldBe(2);
            run.ErrorLines.ShouldHaveSingleItem().ShouldContain("marked read-only; make it writable");
            File.ReadAllText(job).ShouldBe(Desks.SmallJob);
            Directory.GetFileSystemEntries(folder.Path).ShouldBe([job]);
        }
        finally
        {
            File.SetAttributes(job, FileAttributes.Normal);
        }
    }

    [Theory]
    [InlineData("new", "PLACE")]
    [InlineData("sheets", "JOB", "--to", "PLACE")]
    public void A_place_that_cannot_be_written_to_is_bad_usage(params string[] arguments)
    {
        var run = CommandRun.Of([.. arguments.Select(argument => argument.Replace("JOB", job, StringComparison.Ordinal)
            .Replace("PLACE", Path.Combine(job, "below", "a.file"), StringComparison.Ordinal))]);

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("cannot be written: ");
        File.ReadAllText(job).ShouldBe(Desks.SmallJob);
    }

    [Fact]
    public void A_new_job_never_takes_the_place_of_a_file()
    {
        var run = CommandRun.Of("new", job);

        run.ExitCode.ShouldBe(2);
        File.ReadAllText(job).ShouldBe(Desks.SmallJob);
        Directory.GetFileSystemEntries(folder.Path).ShouldBe([job]);
    }

    [Fact]
    public void A_desk_whose_folder_is_gone_says_so_and_keeps_the_work()
    {
        Directory.CreateDirectory(folder.File("deep"));
        var deep = folder.File("deep/b.job.yaml", Desks.SmallJob);
        var desk = Desks.Of(JobFile.Open(deep));
        var work = Change(desk);
        Directory.Delete(folder.File("deep"), recursive: true);

        desk.Do(Word.Save);

        desk.Message.ShouldStartWith("not saved: ");
        desk.Unsaved.ShouldBeTrue();
        desk.Text.ShouldBe(work);
    }

    [Fact]
    public void A_desk_whose_file_is_gone_writes_it_anew()
    {
        var desk = Desks.Of(JobFile.Open(job));
        var work = Change(desk);
        File.Delete(job);

        desk.Do(Word.Save);

        File.ReadAllText(job).ShouldBe(work);
        desk.Unsaved.ShouldBeFalse();
    }

    [Fact]
    public void A_name_that_cannot_be_written_to_is_asked_for_again()
    {
        var desk = Desks.Small();
        desk.Do(Word.Save);

        desk.Take(Path.Combine(job, "below", "b.job.yaml")).ShouldBeFalse();
        desk.File.Path.ShouldBeNull();
        desk.Take(folder.File("b.job.yaml")).ShouldBeTrue();

        desk.Unsaved.ShouldBeFalse();
        File.ReadAllText(folder.File("b.job.yaml")).ShouldBe(Desks.SmallJob);
    }

    [Fact]
    public void What_a_killed_save_left_behind_is_swept_after_a_day_and_not_before()
    {
        var stale = folder.File(".a.job.yaml.123.new", "half");
        var fresh = folder.File(".a.job.yaml.124.new", "half");
        var other = folder.File(".b.job.yaml.125.new", "half");
        var no = folder.File(".a.new", "not ours");
        foreach (var old in new[] { stale, other, no })
            File.SetLastWriteTimeUtc(old, DateTime.UtcNow.AddDays(-2));

        AtomicFile.Write(job, "new"u8);

        Directory.GetFileSystemEntries(folder.Path).ShouldBe([job, fresh, other, no], ignoreOrder: true);
        File.ReadAllText(job).ShouldBe("new");
    }

    [Fact]
    public void A_planted_file_beside_the_target_is_not_written_through()
    {
        var precious = folder.File("precious", "precious");
        File.CreateSymbolicLink(folder.File($".a.job.yaml.{Environment.ProcessId}.new"), precious);

        AtomicFile.Write(job, "new"u8);

        File.ReadAllText(precious).ShouldBe("precious");
        File.ReadAllText(job).ShouldBe("new");
        new FileInfo(job).LinkTarget.ShouldBeNull();
    }

    [Fact]
    public void Who_may_read_the_file_stays_so()
    {
        if (OperatingSystem.IsWindows())
            return;

        File.SetUnixFileMode(job, UnixFileMode.UserRead | UnixFileMode.UserWrite);

        AtomicFile.Write(job, "new"u8);

        File.GetUnixFileMode(job).ShouldBe(UnixFileMode.UserRead | UnixFileMode.UserWrite);
    }

    public void Dispose() => folder.Dispose();

    private static string Change(JobDesk desk)
    {
        desk.Type(SurfaceColumn.Area, "10 ft2").ShouldBeTrue();
        desk.Text.ShouldNotBe(Desks.SmallJob);
        return desk.Text;
    }
}
