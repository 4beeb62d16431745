using System.Text.Json;
using CoatPlan.Tests.Desk;

namespace CoatPlan.Tests.Commands;

public sealed class WhenCommandTests
{
    [Fact]
    public void Json_has_the_starts_of_the_contract_and_the_same_bytes_each_time()
    {
        var run = CommandRun.WithInput(Desks.SmallJob, "when", "-", "--json");
        var again = CommandRun.WithInput(Desks.SmallJob, "when", "-", "--json");

        run.Errors.ShouldBeEmpty();
        run.ExitCode.ShouldBe(0);
        again.Output.ShouldBe(run.Output);
        using var json = JsonDocument.Parse(run.Output);
        var first = json.RootElement.GetProperty("starts")[0];
        first.EnumerateObject().Select(property => property.Name).ShouldBe(["start", "finish", "meets", "leastMarginC", "waitH"]);
        first.GetProperty("start").GetString()!.ShouldMatch(@"^2027-05-\d\dT\d\d:\d\d:00$");
        first.GetProperty("meets").GetBoolean().ShouldBeTrue();
        first.GetProperty("waitH").GetDouble().ShouldBeGreaterThanOrEqualTo(0);
    }

    [Fact]
    public void The_first_start_written_into_the_job_finishes_then()
    {
        var run = CommandRun.WithInput(Desks.SmallJob, "when", "-", "--json");
        using var json = JsonDocument.Parse(run.Output);
        foreach (var start in json.RootElement.GetProperty("starts").EnumerateArray().Take(3))
        {
            var moved = Desks.SmallJob.Replace("start: 2027-05-14 16:00", $"start: {start.GetProperty("start").GetString()![..16].Replace('T', ' ')}", StringComparison.Ordinal);

            using var plan = JsonDocument.Parse(CommandRun.WithInput(moved, "plan", "-", "--json").Output);

            plan.RootElement.GetProperty("finish").GetString().ShouldBe(start.GetProperty("finish").GetString());
        }
    }

    [Fact]
    public void A_finish_that_no_start_meets_is_three()
    {
        var job = Desks.SmallJob.Replace("start: 2027-05-14 16:00", "start: 2027-05-14 16:00\nfinish-by: 2027-05-14 17:00", StringComparison.Ordinal);

        var run = CommandRun.WithInput(job, "when", "-");

        run.ExitCode.ShouldBe(3);
        run.ErrorLines.ShouldHaveSingleItem().ShouldStartWith("No start finishes by Fri 14 May 17:00");
        run.Output.ShouldContain("missed");
    }

    [Fact]
    public void Air_that_never_permits_a_coat_leaves_no_start()
    {
        var job = Desks.SmallJob.Replace("air: 70 °F,   humidity: 40 %", "air: 30 °F, humidity: 40 %", StringComparison.Ordinal);

        var run = CommandRun.WithInput(job, "when", "-", "--json");

        run.ExitCode.ShouldBe(3);
        using var json = JsonDocument.Parse(run.Output);
        json.RootElement.GetProperty("starts").GetArrayLength().ShouldBe(0);
        run.ErrorLines.ShouldHaveSingleItem();
    }

    [Fact]
    public void Text_fits_eighty_columns_and_names_each_start()
    {
        var run = CommandRun.WithInput(Desks.SmallJob, "when", "-");

        run.Output.Split('\n').ShouldAllBe(line => line.Length <= 80);
        run.Output.ShouldContain("finish ");
    }

    [Fact]
    public void Broken_input_is_two()
    {
        var run = CommandRun.WithInput(Desks.SmallJob.Replace("people: 1", "people: none", StringComparison.Ordinal), "when", "-");

        run.ExitCode.ShouldBe(2);
        run.Output.ShouldBeEmpty();
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("expected");
    }
}
