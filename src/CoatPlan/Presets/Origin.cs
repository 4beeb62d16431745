namespace CoatPlan.Presets;

/// <summary>Who said a value of a label.</summary>
public enum Origin
{
    /// <summary>The job file.</summary>
    Job,

    /// <summary>The product class.</summary>
    Preset,

    /// <summary>A panel that was sprayed for a test.</summary>
    Panel,

    /// <summary>A default of the job file's contract, or another field.</summary>
    Default,
}
