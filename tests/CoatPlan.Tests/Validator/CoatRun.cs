namespace CoatPlan.Tests.Validator;

/// <summary>The coats of one surface at one station, by their start.</summary>
internal sealed record CoatRun(JobSurface Surface, int Station, string? Batch, ImmutableArray<CoatFact> Coats)
{
    /// <summary>Steps other than coats that touch this surface at this station, by their start.</summary>
    public required ImmutableArray<PlannedStep> Others { get; init; }
}
