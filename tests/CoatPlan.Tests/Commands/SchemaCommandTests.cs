using CoatPlan.Jobs;

namespace CoatPlan.Tests.Commands;

public sealed class SchemaCommandTests
{
    [Theory]
    [InlineData("schema")]
    [InlineData("schema", "job")]
    [InlineData("schema", "JOB")]
    public void The_job_files_schema_is_printed(params string[] arguments)
    {
        var run = CommandRun.Of(arguments);

        run.ExitCode.ShouldBe(0);
        run.Output.ShouldBe(JobSchema.Write());
    }

    [Fact]
    public void The_plans_schema_is_printed() => CommandRun.Of("schema", "plan").Output
        .ShouldBe(File.ReadAllText(Path.Combine(Repository.Root, "presets", "schema", "plan.schema.json")).ReplaceLineEndings("\n"));

    [Fact]
    public void There_is_no_schema_of_anything_else() => CommandRun.Of("schema", "quote").ExitCode.ShouldBe(2);
}
