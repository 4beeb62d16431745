namespace CoatPlan.Prep;

/// <summary>What cylinder pressures say of an engine.</summary>
public enum CylinderVerdict
{
    /// <summary>Even, and from the excellent mark up.</summary>
    Excellent,

    /// <summary>Even, and each over the good mark.</summary>
    Good,

    /// <summary>Even, and not each over the good mark.</summary>
    Low,

    /// <summary>A cylinder far below the highest: the engine fails.</summary>
    Uneven,
}
