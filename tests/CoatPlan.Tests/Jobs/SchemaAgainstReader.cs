using System.Reflection;
using System.Text.Json;
using CoatPlan.Jobs;
using Json.Schema;

namespace CoatPlan.Tests.Jobs;

/// <summary>What the reader refuses for its structure, a schema library refuses by the schema; what the reader takes, the schema takes.</summary>
public sealed class SchemaAgainstReader
{
    // What can be seen without knowing the trade, the other values or the calendar. A repeated key is gone once the text is read as JSON.
    private static readonly ImmutableArray<string> Structural =
        ["unknown-key", "missing-key", "wrong-type", "no-unit", "empty-list", "one-of", "not-a-day", "not-hours", "not-a-time", "not-a-window", "no-hours"];

    private static readonly JsonSchema Schema = JsonSchema.FromText(JobSchema.Write());

    public static TheoryData<string, string, string> Mistakes
    {
        get
        {
            var rows = new TheoryData<string, string, string>();
            foreach (var row in typeof(BadInputTests).GetMethod(nameof(BadInputTests.One_mistake_is_one_problem_at_its_place))!
                .GetCustomAttributes<InlineDataAttribute>().Select(row => row.Data).Where(row => Structural.Contains((string)row[2]!)))
            {
                rows.Add((string)row[0]!, ((string)row[1]!).Replace(BadInputTests.Place.ToString(), "", StringComparison.Ordinal), (string)row[2]!);
            }

            return rows;
        }
    }

    [Fact]
    public void There_are_broken_files_enough() => Mistakes.Count.ShouldBeGreaterThan(40);

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_of_structure_does_not_fit(string right, string wrong, string code)
    {
        var at = JobFiles.Complete.IndexOf(right, StringComparison.Ordinal);
        var text = JobFiles.Complete[..at] + wrong + JobFiles.Complete[(at + right.Length)..];

        Fits(JobFiles.AsJson(text)).ShouldBeFalse($"{code}: {wrong}");
    }

    [Theory]
    [InlineData("recoat: [10 min-1 h, after 24 h]", "recoat: 10 min-1 h, after 24 h")]
    [InlineData("recoat: [10 min-1 h, after 24 h]", "recoat: 10 to 60 minutes or after 1 d")]
    [InlineData("recoat: [10 min-1 h, after 24 h]", "recoat: After 1 h 30 min")]
    [InlineData("recoat: [10 min-1 h, after 24 h]", "recoat: [within 30 min., 10–60 min]")]
    [InlineData("Fri: 16:00-21:00", "Friday: 9:00 – 12:00, 22:00-24:00")]
    [InlineData("Fri: 16:00-21:00", "Tues.-thurs: [16:00-21:00]")]
    [InlineData("Fri: 16:00-21:00", "2027-02-28: none")]
    [InlineData("start: 2027-05-14 16:00", "start: 2027-05-14t16:00")]
    [InlineData("covers: 13 ft2", "limits: {air: 50 to 90 F, surface: at least 50 °F, humidity: under 85 %, above-dew: 5 F°}")]
    [InlineData("covers: 13 ft2", "limits: {air: 10 °C–30 °C, humidity: 20-85 percent}")]
    [InlineData("area: 8 ft2", "area: 8½ sq ft")]
    [InlineData("surfaces:\n", "done: [{surface: battery-tray, operation: coat, layer: 1, coat: 1}, {operation: open-hood}]\nsurfaces:\n")]
    public void What_may_be_written_so_reads_and_fits(string right, string other)
    {
        JobFiles.Complete.ShouldContain(right);
        var text = JobFiles.Complete.Replace(right, other, StringComparison.Ordinal);

        JobReader.Read(System.Text.Encoding.UTF8.GetBytes(text), "job", CoatPlan.Jobs.Vocabulary.Contract).Problems.ShouldBeEmpty();
        Errors(JobFiles.AsJson(text)).ShouldBeEmpty();
    }

    [Fact]
    public void Every_name_that_the_keys_agree_about_is_a_key()
    {
        foreach (var (name, definition) in System.Text.Json.Nodes.JsonNode.Parse(JobSchema.Write())!["$defs"]!.AsObject())
        {
            var keys = definition!["properties"]!.AsObject().Select(key => key.Key).ToHashSet();
            foreach (System.Text.RegularExpressions.Match match in System.Text.RegularExpressions.Regex.Matches(definition["allOf"]?.ToJsonString() ?? "", "\"required\":\\[([^\\]]*)\\]"))
                match.Groups[1].Value.Split(',').Select(key => key.Trim('"')).ShouldBeSubsetOf(keys, name);
        }
    }

    [Fact]
    public void Every_job_that_reads_fits()
    {
        foreach (var text in JobFiles.Examples.Concat([JobFiles.Complete, JobFiles.EveryKey, NewJobText]).Concat(Properties.Draws.Jobs(100).Select(draw => draw.Job.Text())))
            Errors(JobFiles.AsJson(text)).ShouldBeEmpty();
    }

    private static string NewJobText => App.NewJob.Text(new LocalDateTime(2027, 5, 14, 8, 0));

    private static bool Fits(string json)
    {
        using var document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    private static string Errors(string json)
    {
        using var document = JsonDocument.Parse(json);
        var result = Schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return result.IsValid ? "" : string.Join('\n', (result.Details ?? []).Where(detail => !detail.IsValid).Select(detail => $"{detail.InstanceLocation} {string.Join(' ', detail.Errors?.Values.AsEnumerable() ?? [])}"));
    }
}
