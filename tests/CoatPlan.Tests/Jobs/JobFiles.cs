using System.Text.Json;
using CoatPlan.Jobs;
using CoatPlan.Jobs.Editing;
using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;

namespace CoatPlan.Tests.Jobs;

/// <summary>The job files beside the tests.</summary>
internal static class JobFiles
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    /// <summary>The complete job that the job file's reference shows.</summary>
    public static string Complete { get; } = Load("Data", "jobs", "complete.job.yaml");

    /// <summary>A job with every key and every word.</summary>
    public static string EveryKey { get; } = Load("Data", "jobs", "every-key.job.yaml");

    /// <summary>The same as JSON, as a script would write it.</summary>
    public static string EveryKeyAsJson { get; } = AsJson(EveryKey);

    /// <summary>The example jobs that come with the program.</summary>
    public static ImmutableArray<string> Examples { get; } =
        [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "presets", "jobs"), "*.job.yaml").Order(StringComparer.Ordinal).Select(path => Load(path))];

    /// <summary>A job as JSON, as a script would write it.</summary>
    public static string AsJson(string text) => JsonSerializer.Serialize(Plain(ModelEdit.Of(YamlText.Read(text, new ProblemList(null))!)), Indented) + "\n";

    private static string Load(params string[] path) => File.ReadAllText(Path.Combine([AppContext.BaseDirectory, .. path])).ReplaceLineEndings("\n");

    private static object Plain(JobValue value) => value switch
    {
        TextValue { Text: "true" or "false" } flag => flag.Text == "true",
        TextValue text => decimal.TryParse(text.Text, System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out decimal number) ? number : text.Text,
        ListValue list => list.Items.Select(Plain).ToArray(),
        MapValue map => map.Entries.ToDictionary(entry => entry.Key, entry => Plain(entry.Value)),
        _ => throw new ArgumentOutOfRangeException(nameof(value)),
    };
}
