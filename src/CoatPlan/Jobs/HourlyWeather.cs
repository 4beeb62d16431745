namespace CoatPlan.Jobs;

/// <summary>A forecast in a file, by the hour.</summary>
public sealed record HourlyWeather : Weather
{
    /// <summary>Path of the file as written, relative to the job file.</summary>
    public required string Path { get; init; }
}
