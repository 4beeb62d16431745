using CoatPlan.App;

namespace CoatPlan.Tests.Commands;

public sealed class NewCommandTests
{
    [Fact]
    public void It_writes_a_job_and_says_where()
    {
        using var folder = new TempFolder();

        var run = CommandRun.Of("new", folder.File("a.job.yaml"));

        run.ExitCode.ShouldBe(0);
        run.Output.ShouldContain(folder.File("a.job.yaml"));
        File.ReadAllText(folder.File("a.job.yaml")).ShouldContain("coatplan: 1");
    }

    [Fact]
    public void It_leaves_a_file_that_exists_alone()
    {
        using var folder = new TempFolder();
        var path = folder.File("a.job.yaml", "mine");

        var run = CommandRun.Of("new", path);

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("exists already");
        File.ReadAllText(path).ShouldBe("mine");
    }

    [Fact]
    public void A_folder_that_is_not_there_is_bad_input()
    {
        using var folder = new TempFolder();

        CommandRun.Of("new", folder.File("no/such/a.job.yaml")).ExitCode.ShouldBe(2);
    }

    [Theory]
    [InlineData(2027, 5, 12, 9, "2027-05-14 16:00", "2027-05-16 20:00")]
    [InlineData(2027, 5, 14, 9, "2027-05-14 16:00", "2027-05-16 20:00")]
    [InlineData(2027, 5, 14, 17, "2027-05-21 16:00", "2027-05-23 20:00")]
    [InlineData(2027, 12, 31, 17, "2028-01-07 16:00", "2028-01-09 20:00")]
    public void It_is_for_the_weekend_that_comes_next(int year, int month, int day, int hour, string start, string finish)
    {
        var text = NewJob.Text(new LocalDateTime(year, month, day, hour, 0));

        text.ShouldContain($"start: {start}");
        text.ShouldContain($"finish-by: {finish}");
    }
}
