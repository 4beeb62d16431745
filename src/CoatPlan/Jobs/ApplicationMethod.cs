namespace CoatPlan.Jobs;

/// <summary>How a product is put on.</summary>
public enum ApplicationMethod
{
    /// <summary>From a can under pressure.</summary>
    Aerosol,

    /// <summary>By brush.</summary>
    Brush,

    /// <summary>By spray gun.</summary>
    SprayGun,
}
