namespace CoatPlan.Presets;

/// <summary>What a material is for coating.</summary>
public enum MaterialFamily
{
    /// <summary>Bare steel or iron.</summary>
    Ferrous,

    /// <summary>Aluminium and its castings.</summary>
    LightMetal,

    /// <summary>Stainless steel.</summary>
    Stainless,

    /// <summary>Steel under a thin zinc or cadmium plating.</summary>
    Plated,

    /// <summary>Copper, brass, bronze.</summary>
    CopperAlloy,

    /// <summary>Plastics, glass-fibre among them.</summary>
    Plastic,

    /// <summary>Rubber: masked, not painted.</summary>
    Rubber,
}
