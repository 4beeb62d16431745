namespace CoatPlan.Tests.Jobs;

/// <summary>The job files beside the tests.</summary>
internal static class JobFiles
{
    /// <summary>The complete job that the job file's reference shows.</summary>
    public static string Complete { get; } = Load("complete.job.yaml");

    /// <summary>A job with every key and every word.</summary>
    public static string EveryKey { get; } = Load("every-key.job.yaml");

    private static string Load(string name) =>
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "jobs", name)).ReplaceLineEndings("\n");
}
