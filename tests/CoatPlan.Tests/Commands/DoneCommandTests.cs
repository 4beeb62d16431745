using System.Text.Json;
using CoatPlan.Tests.Desk;

namespace CoatPlan.Tests.Commands;

public sealed class DoneCommandTests
{
    [Fact]
    public void A_step_becomes_one_entry_and_no_other_byte_changes()
    {
        using var folder = new TempFolder();
        var job = folder.File("a.job.yaml", Desks.SmallJob);

        var run = CommandRun.Of("done", job, "photograph", "--at", "16:20", "--took", "20 min", "--note", "shims: two left");

        run.Errors.ShouldBeEmpty();
        run.ExitCode.ShouldBe(0);
        run.Output.ShouldContain("finish: ");
        var text = File.ReadAllText(job);
        text.ShouldStartWith(Desks.SmallJob.TrimEnd('\n'));
        text[Desks.SmallJob.TrimEnd('\n').Length..].Trim()
            .ShouldBe("""done: [{operation: photograph, at: 2027-05-14 16:20, took: 20 min, note: "shims: two left"}]""");
    }

    [Fact]
    public void A_coat_is_written_by_layer_and_coat_with_its_cans()
    {
        using var folder = new TempFolder();
        var job = folder.File("a.job.yaml", Desks.SmallJob);
        var coat = FirstCoat(job);

        CommandRun.Of("done", job, coat, "--at", "2027-05-15 11:00", "--cans", "0.75").ExitCode.ShouldBe(0);

        File.ReadAllText(job).ShouldContain("layer: 1, coat: 1, at: 2027-05-15 11:00, cans: 0.75}");
    }

    [Fact]
    public void As_of_is_set_only_where_it_is_asked_for()
    {
        using var folder = new TempFolder();
        var without = folder.File("a.job.yaml", Desks.SmallJob);
        var with = folder.File("b.job.yaml", Desks.SmallJob);
        var at = folder.File("c.job.yaml", Desks.SmallJob);

        CommandRun.Of("done", without, "photograph", "--at", "16:20").ExitCode.ShouldBe(0);
        CommandRun.Of("done", with, "photograph", "--at", "16:20", "--as-of").ExitCode.ShouldBe(0);
        CommandRun.Of("done", at, "photograph", "--at", "16:20", "--as-of", "17:05").ExitCode.ShouldBe(0);

        File.ReadAllText(without).ShouldNotContain("as-of");
        File.ReadAllText(with).ShouldContain("as-of: 2027-05-14 16:20\n");
        File.ReadAllText(at).ShouldContain("as-of: 2027-05-14 17:05\n");
    }

    [Fact]
    public void A_second_entry_stands_behind_the_first_and_a_step_is_done_once()
    {
        using var folder = new TempFolder();
        var job = folder.File("a.job.yaml", Desks.SmallJob);
        CommandRun.Of("done", job, "photograph", "--at", "16:20").ExitCode.ShouldBe(0);
        var next = Steps(job).First(step => !step.GetProperty("done").GetBoolean()).GetProperty("id").GetString()!;

        CommandRun.Of("done", job, next, "--at", "16:50").ExitCode.ShouldBe(0);
        var again = CommandRun.Of("done", job, "photograph", "--at", "16:30");

        again.ExitCode.ShouldBe(2);
        again.ErrorLines.ShouldHaveSingleItem().ShouldContain("done already");
        Steps(job).Count(step => step.GetProperty("done").GetBoolean()).ShouldBe(2);
    }

    [Fact]
    public void An_unknown_step_is_bad_input_with_the_near_ones_and_writes_nothing()
    {
        using var folder = new TempFolder();
        var job = folder.File("a.job.yaml", Desks.SmallJob);

        var run = CommandRun.Of("done", job, "fotograph", "--at", "16:20");

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("did you mean photograph?");
        File.ReadAllText(job).ShouldBe(Desks.SmallJob);
    }

    [Theory]
    [InlineData("--at", "25:00")]
    [InlineData("--at", "16:20", "--took", "3 ft")]
    [InlineData("--at", "16:20", "--cans", "a few")]
    [InlineData("--at", "16:20", "--as-of", "soon")]
    public void What_cannot_be_read_is_bad_input_and_writes_nothing(params string[] options)
    {
        using var folder = new TempFolder();
        var job = folder.File("a.job.yaml", Desks.SmallJob);

        var run = CommandRun.Of(["done", job, "photograph", .. options]);

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldNotBeEmpty();
        File.ReadAllText(job).ShouldBe(Desks.SmallJob);
    }

    [Fact]
    public void Standard_input_cannot_be_written_to()
    {
        var run = CommandRun.WithInput(Desks.SmallJob, "done", "-", "photograph", "--at", "16:20");

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem();
    }

    [Fact]
    public void Json_tells_the_finish_before_and_after()
    {
        using var folder = new TempFolder();
        var job = folder.File("a.job.yaml", Desks.SmallJob);
        var before = Finish(job);

        var run = CommandRun.Of("done", job, "photograph", "--at", "2027-05-15 09:00", "--as-of", "--json");

        run.ExitCode.ShouldBe(0);
        using var json = JsonDocument.Parse(run.Output);
        json.RootElement.GetProperty("step").GetString().ShouldBe("photograph");
        json.RootElement.GetProperty("finishBefore").GetString().ShouldBe(before);
        json.RootElement.GetProperty("finishAfter").GetString().ShouldBe(Finish(job));
        json.RootElement.GetProperty("finishMovesMin").GetInt32().ShouldBeGreaterThan(0);
    }

    [Fact]
    public void A_step_of_a_class_is_done_at_all_its_stations_and_that_is_said()
    {
        using var folder = new TempFolder();
        var job = folder.File("a.job.yaml", Desks.SmallJob.Replace("  people: 1", "  people: 1\n  stations: 2", StringComparison.Ordinal));
        var photograph = Steps(job).Last(step => step.GetProperty("kind").GetString() == "photograph").GetProperty("id").GetString()!;

        var run = CommandRun.Of("done", job, photograph, "--at", "16:20");

        photograph.ShouldEndWith("@2");
        string.Join(' ', run.Output.Split('\n')).ShouldContain("it is done at all 2 stations");
        Steps(job).Where(step => step.GetProperty("kind").GetString() == "photograph").ShouldAllBe(step => step.GetProperty("done").GetBoolean());
    }

    private static string FirstCoat(string job) =>
        Steps(job).First(step => step.GetProperty("kind").GetString() == "coat").GetProperty("id").GetString()!;

    private static string? Finish(string job)
    {
        using var json = JsonDocument.Parse(CommandRun.Of("plan", job, "--json").Output);
        return json.RootElement.GetProperty("finish").GetString();
    }

    private static List<JsonElement> Steps(string job) =>
        [.. JsonDocument.Parse(CommandRun.Of("plan", job, "--json").Output).RootElement.GetProperty("steps").EnumerateArray()];
}
