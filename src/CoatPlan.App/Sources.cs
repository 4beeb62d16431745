namespace CoatPlan.App;

/// <summary>What a job may draw on besides its own file.</summary>
/// <param name="Presets">Folder with presets of the user's own; null for the built-in ones alone.</param>
/// <param name="Hours">Folder whose forecast files may be read besides those below the job's own folder; null for none.</param>
internal sealed record Sources(string? Presets, string? Hours)
{
    /// <summary>The built-in presets, and forecasts below the job's folder.</summary>
    public static Sources Usual { get; } = new(null, null);
}
