namespace CoatPlan.Presets;

/// <summary>What a product class does in a system.</summary>
public enum ProductRole
{
    /// <summary>Holds to what is below and gives hold to what is above.</summary>
    Primer,

    /// <summary>Turns rust into something that can be coated.</summary>
    Converter,

    /// <summary>Makes polyolefin take paint.</summary>
    Promoter,

    /// <summary>Colour: the coat that is seen.</summary>
    Colour,

    /// <summary>Clear over colour.</summary>
    Clear,
}
