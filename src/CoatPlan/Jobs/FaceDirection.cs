namespace CoatPlan.Jobs;

/// <summary>Which way the faces of a surface look.</summary>
public enum FaceDirection
{
    /// <summary>Some of each.</summary>
    Mixed,

    /// <summary>Upright: paint can run.</summary>
    Vertical,

    /// <summary>Flat on the bench.</summary>
    Level,
}
