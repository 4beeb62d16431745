using System.Text.Json;
using CoatPlan.Tests.Desk;

namespace CoatPlan.Tests.Commands;

public sealed class CompareCommandTests
{
    [Fact]
    public void Longer_hours_show_in_the_finish_and_the_same_job_in_nothing()
    {
        using var folder = new TempFolder();
        var one = folder.File("one.job.yaml", Desks.SmallJob);
        var two = folder.File("longer.job.yaml", Desks.SmallJob.Replace("Fri: 16:00-21:00", "Fri: 16:00-00:00", StringComparison.Ordinal));

        using var same = JsonDocument.Parse(CommandRun.Of("compare", one, one, "--json").Output);
        using var longer = JsonDocument.Parse(CommandRun.Of("compare", one, two, "--json").Output);

        same.RootElement.GetProperty("change").GetProperty("finishMovesMin").GetInt32().ShouldBe(0);
        longer.RootElement.GetProperty("change").GetProperty("finishMovesMin").GetInt32().ShouldBeLessThan(0);
        longer.RootElement.GetProperty("change").GetProperty("cans").GetInt32().ShouldBe(0);
    }

    [Fact]
    public void Json_says_what_each_plan_says()
    {
        using var folder = new TempFolder();
        var job = folder.File("one.job.yaml", Desks.SmallJob);

        using var both = JsonDocument.Parse(CommandRun.Of("compare", job, job, "--json").Output);
        using var plan = JsonDocument.Parse(CommandRun.Of("plan", job, "--json").Output);
        var (first, whole) = (both.RootElement.GetProperty("plans")[0], plan.RootElement);

        first.GetProperty("finish").GetString().ShouldBe(whole.GetProperty("finish").GetString());
        first.GetProperty("twaMixtureRatio").GetDouble().ShouldBe(whole.GetProperty("air").GetProperty("twaMixtureRatio").GetDouble());
        first.GetProperty("peakMixtureRatio").GetDouble().ShouldBe(whole.GetProperty("air").GetProperty("byStep").EnumerateArray().Max(step => step.GetProperty("mixtureRatio").GetDouble()));
        first.GetProperty("cans").GetInt32().ShouldBe(whole.GetProperty("supplies").EnumerateArray().Sum(supply => supply.GetProperty("cans").GetInt32()));
        first.GetProperty("price").GetDecimal().ShouldBe(whole.GetProperty("supplies").EnumerateArray().Sum(supply => supply.GetProperty("price").GetDecimal()));
    }

    [Fact]
    public void Text_has_both_names_side_by_side_in_eighty_columns()
    {
        using var folder = new TempFolder();
        var one = folder.File("one.job.yaml", Desks.SmallJob);

        var run = CommandRun.WithInput(Desks.SmallJob, "compare", one, "-");

        run.ExitCode.ShouldBe(0);
        run.Output.Split('\n').ShouldAllBe(line => line.Length <= 80);
        run.Output.ShouldContain("standard input");
        run.Output.ShouldContain("Finishes at the same minute.");
    }

    [Fact]
    public void One_that_misses_what_it_asks_is_three_with_its_reason()
    {
        using var folder = new TempFolder();
        var one = folder.File("one.job.yaml", Desks.SmallJob);
        var late = folder.File("late.job.yaml", Desks.SmallJob.Replace("start: 2027-05-14 16:00", "start: 2027-05-14 16:00\nfinish-by: 2027-05-14 17:00", StringComparison.Ordinal));

        var run = CommandRun.Of("compare", one, late);

        run.ExitCode.ShouldBe(3);
        run.ErrorLines.ShouldAllBe(line => line.StartsWith(late, StringComparison.Ordinal));
    }

    [Fact]
    public void Mistakes_in_both_files_are_found_in_one_go()
    {
        using var folder = new TempFolder();
        var one = folder.File("one.job.yaml", Desks.SmallJob.Replace("people: 1", "people: none", StringComparison.Ordinal));

        var run = CommandRun.Of("compare", one, folder.File("no-such.job.yaml"));

        run.ExitCode.ShouldBe(2);
        run.Output.ShouldBeEmpty();
        run.ErrorLines.Count.ShouldBe(2);
    }

    [Fact]
    public void Standard_input_cannot_be_both() => CommandRun.WithInput(Desks.SmallJob, "compare", "-", "-").ExitCode.ShouldBe(2);
}
