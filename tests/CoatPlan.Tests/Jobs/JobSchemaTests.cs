using System.Text.Json;
using System.Text.Json.Nodes;
using CoatPlan.Jobs;
using CoatPlan.Jobs.Reading;
using Json.Schema;

namespace CoatPlan.Tests.Jobs;

public sealed class JobSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(JobSchema.Write());

    [Fact]
    public void A_job_with_every_key_and_every_word_fits() => Fits(JobFiles.EveryKeyAsJson).ShouldBeTrue();

    [Theory]
    [InlineData("\"people\": 2", "\"people\": 0")]
    [InlineData("\"people\": 2", "\"peeple\": 2")]
    [InlineData("\"units\": \"metric\"", "\"units\": \"furlongs\"")]
    [InlineData("\"start\": \"2027-05-14 16:00\"", "\"start\": \"tomorrow\"")]
    [InlineData("\"stays\": true", "\"stays\": \"yes\"")]
    public void A_mistake_that_an_editor_can_see_does_not_fit(string right, string wrong)
    {
        JobFiles.EveryKeyAsJson.ShouldContain(right);

        Fits(JobFiles.EveryKeyAsJson.Replace(right, wrong, StringComparison.Ordinal)).ShouldBeFalse();
    }

    [Fact]
    public void The_file_that_comes_with_the_program_is_the_newest()
    {
        string path = Path.Combine(Repository.Root, "presets", "schema", "job.schema.json");
        if (Environment.GetEnvironmentVariable("COATPLAN_PICTURES") is not null) File.WriteAllText(path, JobSchema.Write());
        string stored = File.ReadAllText(path).ReplaceLineEndings("\n");

        stored.ShouldBe(JobSchema.Write());
    }

    [Fact]
    public void Every_map_has_a_name_of_its_own()
    {
        var definitions = JsonNode.Parse(JobSchema.Write())!["$defs"]!.AsObject();

        definitions["a-surface"]!["properties"]!["area"]!["$comment"]!.GetValue<string>().ShouldBe(JobRanges.Area.ToString());
        definitions["a-shape"]!["properties"]!.AsObject().Count.ShouldBe(JobKeys.Shapes.Length);
        definitions["the-job"]!["required"]!.AsArray().Select(key => key!.GetValue<string>())
            .ShouldBe(["coatplan", "job", "start", "place", "crew", "products", "systems", "surfaces"]);
    }

    private static bool Fits(string json)
    {
        using var document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
