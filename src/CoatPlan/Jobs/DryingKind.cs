namespace CoatPlan.Jobs;

/// <summary>How a product dries, which decides what warmth and damp do to it.</summary>
public enum DryingKind
{
    /// <summary>Solvent leaves, nothing reacts.</summary>
    Solvent,

    /// <summary>Takes up oxygen from the air.</summary>
    Oxidation,

    /// <summary>Water leaves: slower in damp air.</summary>
    Waterborne,

    /// <summary>Takes up moisture from the air: slower in dry air.</summary>
    Moisture,

    /// <summary>Two parts react once activated.</summary>
    TwoPart,
}
