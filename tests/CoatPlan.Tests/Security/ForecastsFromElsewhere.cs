using CoatPlan.App;
using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Desk;

namespace CoatPlan.Tests.Security;

/// <summary>The forecast that a job names is read below the job's folder, and nowhere else unless the person allows it.</summary>
public sealed class ForecastsFromElsewhere : IDisposable
{
    private const string Hours = "time,air °F,humidity %\n2027-05-14 00:00,70,40\n2027-05-30 00:00,70,40\n";

    private readonly TempFolder root = new();

    private readonly string jobs;

    public ForecastsFromElsewhere()
    {
        jobs = Directory.CreateDirectory(root.File("jobs")).FullName;
        Directory.CreateDirectory(Path.Combine(jobs, "deep", "er"));
        Directory.CreateDirectory(root.File("jobs-elsewhere"));
        foreach (var name in new[] { "out.csv", "jobs/in.csv", "jobs/deep/er/in.csv", "jobs-elsewhere/out.csv" })
            root.File(name, Hours);
    }

    [Theory]
    [InlineData("in.csv")]
    [InlineData("deep/er/in.csv")]
    [InlineData("deep/../in.csv")]
    [InlineData("../jobs/in.csv")]
    public void Below_the_folder_of_the_job_it_is_read(string named) => Check(named).ExitCode.ShouldBe(0);

    [Theory]
    [InlineData("../out.csv")]
    [InlineData("../jobs-elsewhere/out.csv")]
    [InlineData("deep/../../out.csv")]
    [InlineData("/etc/hostname")]
    [InlineData("..")]
    public void Anywhere_else_it_is_not(string named)
    {
        var run = Check(named);

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("--hours-from");
    }

    [Fact]
    public void A_link_leads_out_neither_as_file_nor_as_folder()
    {
        File.CreateSymbolicLink(Path.Combine(jobs, "link.csv"), "../out.csv");
        Directory.CreateSymbolicLink(Path.Combine(jobs, "folder"), root.Path);
        File.CreateSymbolicLink(Path.Combine(jobs, "inner.csv"), "deep/er/in.csv");
        File.CreateSymbolicLink(Path.Combine(jobs, "round.csv"), "round.csv");

        Check("link.csv").Errors.ShouldContain("--hours-from");
        Check("folder/out.csv").Errors.ShouldContain("--hours-from");
        Check("inner.csv").ExitCode.ShouldBe(0);
        Check("round.csv").Errors.ShouldContain("circle");
    }

    [Fact]
    public void A_folder_that_the_person_names_is_allowed_and_no_other()
    {
        Check("../out.csv", "--hours-from", root.Path).ExitCode.ShouldBe(0);
        Check("../jobs-elsewhere/out.csv", "--hours-from", root.File("jobs-elsewhere")).ExitCode.ShouldBe(0);
        Check("../out.csv", "--hours-from", root.File("jobs-elsewhere")).ExitCode.ShouldBe(2);
    }

    [Fact]
    public void The_same_holds_for_every_command_that_reads_a_job()
    {
        var job = Job("../out.csv");

        foreach (var arguments in new string[][] { ["plan"], ["explain"], ["check"], ["sheets"], ["done"], ["when"], ["chance"], ["compare"] })
        {
            string[] rest = arguments[0] switch
            {
                "explain" => ["finish"],
                "sheets" => ["--to", root.File("sheets")],
                "done" => ["x", "--at", "16:00"],
                "compare" => [job],
                _ => [],
            };
            var run = CommandRun.Of([arguments[0], job, .. rest]);
            run.ExitCode.ShouldBe(2, arguments[0]);
            run.Errors.ShouldContain("--hours-from", customMessage: arguments[0]);
        }

        JobSource.Workshop(Sources.Usual).Read(File.ReadAllText(job), "job", job, null).Problems.ShouldHaveSingleItem().Code.ShouldBe("no-forecast");
        Directory.Exists(root.File("sheets")).ShouldBeFalse();
    }

    [Fact]
    public void A_name_that_is_no_path_is_a_problem_at_its_place()
    {
        Check("\"a\\0b.csv\"").ErrorLines.ShouldHaveSingleItem().ShouldContain(":9:");
        Check("deep").ExitCode.ShouldBe(2);
    }

    [Fact]
    public void A_pipe_that_nobody_fills_is_not_waited_for()
    {
        if (OperatingSystem.IsWindows() || !OtherProgram.IsThere("mkfifo"))
            return;

        OtherProgram.Run(jobs, "mkfifo", "pipe.csv");
        Directory.CreateDirectory(root.File("presets"));
        OtherProgram.Run(root.File("presets"), "mkfifo", "pipe.yaml");

        Check("pipe.csv").ExitCode.ShouldBe(2);
        Check("in.csv", "--presets", root.File("presets")).ExitCode.ShouldBeOneOf(0, 2);
    }

    public void Dispose() => root.Dispose();

    private CommandRun Check(string named, params string[] options) => CommandRun.Of(["check", Job(named), .. options]);

    private string Job(string named)
    {
        Desks.SmallJob.ShouldContain("steady: {air: 70 °F,   humidity: 40 %}");
        return root.File("jobs/a.job.yaml", Desks.SmallJob.Replace("steady: {air: 70 °F,   humidity: 40 %}", $"hours: {named}", StringComparison.Ordinal));
    }
}
