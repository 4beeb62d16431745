namespace CoatPlan.Presets;

/// <summary>What a product class asks of a steel surface's rust.</summary>
public enum RustRule
{
    /// <summary>Bright or sound metal: rust comes off first.</summary>
    Never,

    /// <summary>Light, tight rust may stay.</summary>
    Tight,

    /// <summary>There must be rust: it works on nothing else.</summary>
    Only,
}
