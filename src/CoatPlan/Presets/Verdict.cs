namespace CoatPlan.Presets;

/// <summary>Whether a product class may go on a material, over another class or over an old finish.</summary>
public enum Verdict
{
    /// <summary>When clean, dry and scuffed.</summary>
    Yes,

    /// <summary>With a primer made for the material first.</summary>
    Primer,

    /// <summary>Inside its recoat window, or later after the step that window names.</summary>
    Window,

    /// <summary>With a barrier coat between.</summary>
    Sealer,

    /// <summary>After a patch test of a day or more.</summary>
    Test,

    /// <summary>Not at all.</summary>
    No,

    /// <summary>Nothing is known: a product without a preset.</summary>
    Unknown,
}
