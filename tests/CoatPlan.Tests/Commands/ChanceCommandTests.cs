using System.Text.Json;
using CoatPlan.Tests.Desk;

namespace CoatPlan.Tests.Commands;

public sealed class ChanceCommandTests
{
    [Fact]
    public void Json_has_the_names_of_the_contract_and_the_same_bytes_each_time()
    {
        var run = CommandRun.WithInput(Desks.SmallJob, "chance", "-", "--draws", "100", "--json");
        var again = CommandRun.WithInput(Desks.SmallJob, "chance", "-", "--json", "--draws", "100");

        run.Errors.ShouldBeEmpty();
        run.ExitCode.ShouldBe(0);
        again.Output.ShouldBe(run.Output);
        using var json = JsonDocument.Parse(run.Output);
        var root = json.RootElement;
        root.EnumerateObject().Select(property => property.Name).ShouldBe(["draws", "planned", "meets", "finish50", "finish90", "cans", "costly", "buys"]);
        root.GetProperty("draws").GetInt32().ShouldBe(100);
        root.GetProperty("meets").ValueKind.ShouldBe(JsonValueKind.Null);
        root.GetProperty("cans")[0].EnumerateObject().Select(property => property.Name).ShouldBe(["product", "cans", "share"]);
        string.CompareOrdinal(root.GetProperty("finish50").GetString(), root.GetProperty("finish90").GetString()).ShouldBeLessThanOrEqualTo(0);
    }

    [Fact]
    public void Text_fits_eighty_columns()
    {
        var run = CommandRun.WithInput(Desks.SmallJob, "chance", "-", "--draws", "100");

        run.ExitCode.ShouldBe(0);
        run.Output.Split('\n').ShouldAllBe(line => line.Length <= 80);
        run.Output.ShouldContain("Even odds");
    }

    [Theory]
    [InlineData("0")]
    [InlineData("many")]
    [InlineData("1000001")]
    public void A_number_of_draws_that_is_none_is_bad_usage(string draws)
    {
        var run = CommandRun.WithInput(Desks.SmallJob, "chance", "-", "--draws", draws);

        run.ExitCode.ShouldBe(2);
        run.Errors.ShouldContain("--draws");
    }

    [Fact]
    public void A_job_that_cannot_be_placed_is_three_with_its_reasons()
    {
        var run = CommandRun.WithInput(Desks.SmallJob.Replace("air: 70 °F,   humidity: 40 %", "air: 30 °F, humidity: 40 %", StringComparison.Ordinal), "chance", "-", "--draws", "10");

        run.ExitCode.ShouldBe(3);
        run.ErrorLines.ShouldNotBeEmpty();
    }

    [Fact]
    public void Broken_input_is_two() =>
        CommandRun.WithInput(Desks.SmallJob.Replace("people: 1", "people: none", StringComparison.Ordinal), "chance", "-").ExitCode.ShouldBe(2);
}
