namespace CoatPlan.Climate;

/// <summary>What besides warmth sets the pace at which something dries.</summary>
internal enum RateKind
{
    /// <summary>Warmth alone.</summary>
    Warmth,

    /// <summary>Warmth, and room for water in the air.</summary>
    WarmthAndDryness,

    /// <summary>Warmth, and water in the air.</summary>
    WarmthAndDamp,

    /// <summary>Water evaporating: the gap between its pressure at the surface and that in the air.</summary>
    Evaporation,
}
