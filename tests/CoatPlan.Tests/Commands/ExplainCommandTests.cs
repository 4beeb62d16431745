using System.Text.Json;

namespace CoatPlan.Tests.Commands;

public sealed class ExplainCommandTests
{
    private static string Job => Path.Combine(AppContext.BaseDirectory, "presets", "jobs", "roadster-weekend.job.yaml");

    [Fact]
    public void A_figure_is_printed_with_its_sum_its_inputs_and_their_sources()
    {
        var run = CommandRun.Of("explain", Job, "cans", "black");

        run.ExitCode.ShouldBe(0);
        run.Output.ShouldStartWith("supplies[black].cans\ncans of Satin black, underhood needed in all: ");
        run.Output.ShouldContain("  = the smallest whole number");
        run.Output.ShouldContain("source: the job file");
        run.Output.Split('\n').ShouldAllBe(line => line.Length <= 80);
    }

    [Fact]
    public void As_json_it_is_the_same_tree()
    {
        var run = CommandRun.Of("explain", Job, "air mixture", "--json");

        run.ExitCode.ShouldBe(0);
        using var json = JsonDocument.Parse(run.Output);
        json.RootElement.GetProperty("formula").GetString().ShouldNotBeNullOrEmpty();
        json.RootElement.GetProperty("number").GetDouble().ShouldBeGreaterThan(0);
        json.RootElement.GetProperty("inputs").EnumerateArray().ShouldAllBe(input => input.GetProperty("source").GetString()!.Length > 0);
    }

    [Fact]
    public void What_is_no_figure_is_bad_input_with_what_was_perhaps_meant()
    {
        var run = CommandRun.Of("explain", Job, "cans", "blak");

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("did you mean 'cans black'");
    }
}
