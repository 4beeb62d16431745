using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Desk;

namespace CoatPlan.Tests.Security;

/// <summary>A job is data: planning it writes nothing, and its sheets land in the folder that was asked for.</summary>
public sealed class NothingOutsideTheFolder : IDisposable
{
    private readonly TempFolder folder = new();

    [Theory]
    [InlineData("../../escaped")]
    [InlineData("/tmp/escaped")]
    [InlineData("a/b\\\\c")]
    [InlineData("..")]
    public void Names_make_no_path(string name)
    {
        var job = folder.File("a.job.yaml", Desks.SmallJob.Replace("job: Small bay ", $"job: \"{name}\" ", StringComparison.Ordinal).Replace("name: Bracket", $"name: \"{name}\"", StringComparison.Ordinal));
        Directory.CreateDirectory(folder.File("deep"));

        CommandRun.Of("sheets", job, "--to", folder.File("deep/sheets")).ExitCode.ShouldBe(0);

        Directory.GetFileSystemEntries(folder.Path).ShouldBe([job, folder.File("deep")], ignoreOrder: true);
        Directory.GetFileSystemEntries(folder.File("deep")).ShouldBe([folder.File("deep/sheets")]);
        Directory.GetDirectories(folder.File("deep/sheets")).ShouldBeEmpty();
    }

    [Fact]
    public void A_link_in_the_folder_is_replaced_and_what_it_names_stays()
    {
        var job = folder.File("a.job.yaml", Desks.SmallJob);
        var precious = folder.File("precious.txt", "precious");
        Directory.CreateDirectory(folder.File("sheets"));
        File.CreateSymbolicLink(folder.File("sheets/work.txt"), precious);
        File.CreateSymbolicLink(folder.File("sheets/steps.csv"), folder.File("not-there.csv"));

        CommandRun.Of("sheets", job, "--to", folder.File("sheets")).ExitCode.ShouldBe(0);

        File.ReadAllText(precious).ShouldBe("precious");
        File.Exists(folder.File("not-there.csv")).ShouldBeFalse();
        new FileInfo(folder.File("sheets/work.txt")).LinkTarget.ShouldBeNull();
    }

    [Theory]
    [InlineData("!!System.Diagnostics.Process,System {}")]
    [InlineData("!<tag:example.org,2000:clr:System.IO.FileInfo> /etc/passwd")]
    [InlineData("!!python/object/apply:os.system [touch x]")]
    public void A_tag_makes_no_object(string value)
    {
        var job = folder.File("a.job.yaml", Desks.SmallJob.Replace("job: Small bay ", $"job: {value} ", StringComparison.Ordinal));

        var run = CommandRun.Of("check", job);

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldNotBeEmpty();
        run.ErrorLines.ShouldAllBe(line => line.StartsWith(job + ":3:", StringComparison.Ordinal));
    }

    public void Dispose() => folder.Dispose();
}
